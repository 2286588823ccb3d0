/** Our colours and measures as a theme for Fluent; the colours are CSS variables, which paneVariables sets on the pane. */
import { type Theme as FluentTheme, webDarkTheme, webLightTheme } from "@fluentui/react-components";
import type { CSSProperties } from "react";
import type { Theme } from "../host/port.js";
import { contrastTones, darkTones, lightTones, type Tones } from "../host/tones.js";

const paper = "var(--paper)";
const ink = "var(--ink)";
const muted = "var(--muted)";
const accent = "var(--accent)";
const line = "var(--line)";
const soft = "var(--soft)";
/** Pressed and hovered: the accent a step towards the ink. */
const deeper = "color-mix(in srgb, var(--accent) 85%, var(--ink))";

const ours: Partial<FluentTheme> = {
  fontFamilyBase: "var(--font)",
  fontFamilyNumeric: "var(--font)",
  fontFamilyMonospace: "var(--mono)",
  borderRadiusSmall: "4px",
  borderRadiusMedium: "4px",
  borderRadiusLarge: "4px",
  colorNeutralBackground1: paper,
  colorNeutralBackground1Hover: soft,
  colorNeutralBackground1Pressed: soft,
  colorNeutralBackground1Selected: soft,
  colorNeutralBackground2: soft,
  colorSubtleBackgroundHover: soft,
  colorSubtleBackgroundPressed: soft,
  colorSubtleBackgroundSelected: soft,
  colorNeutralForeground1: ink,
  colorNeutralForeground1Hover: ink,
  colorNeutralForeground1Pressed: ink,
  colorNeutralForeground1Selected: ink,
  colorNeutralForeground2: ink,
  colorNeutralForeground2Hover: ink,
  colorNeutralForeground2Pressed: ink,
  colorNeutralForeground2Selected: ink,
  colorNeutralForeground2BrandHover: accent,
  colorNeutralForeground2BrandPressed: accent,
  colorNeutralForeground2BrandSelected: accent,
  colorNeutralForeground3: muted,
  colorNeutralForeground3Hover: muted,
  colorNeutralForeground3Pressed: muted,
  colorNeutralForeground4: muted,
  colorNeutralForegroundOnBrand: "var(--on-accent)",
  colorNeutralStroke1: line,
  colorNeutralStroke1Hover: muted,
  colorNeutralStroke1Pressed: muted,
  colorNeutralStroke2: line,
  colorNeutralStrokeAccessible: muted,
  colorNeutralStrokeAccessibleHover: ink,
  colorNeutralStrokeAccessiblePressed: ink,
  colorStrokeFocus1: paper,
  colorStrokeFocus2: accent,
  colorBrandBackground: accent,
  colorBrandBackgroundHover: deeper,
  colorBrandBackgroundPressed: deeper,
  colorBrandForeground1: accent,
  colorBrandForeground2: accent,
  colorBrandForegroundLink: accent,
  colorBrandForegroundLinkHover: deeper,
  colorBrandForegroundLinkPressed: deeper,
  colorBrandStroke1: accent,
  colorCompoundBrandStroke: accent,
  colorCompoundBrandStrokeHover: deeper,
  colorCompoundBrandStrokePressed: deeper,
  colorCompoundBrandForeground1: accent,
  colorCompoundBrandForeground1Hover: deeper,
  colorCompoundBrandForeground1Pressed: deeper,
  colorCompoundBrandBackground: accent,
  colorCompoundBrandBackgroundHover: deeper,
  colorCompoundBrandBackgroundPressed: deeper,
  colorNeutralForegroundDisabled: muted,
};

const tones: Readonly<Record<Theme, Tones>> = { light: lightTones, dark: darkTones, contrast: contrastTones };

export function paneTheme(theme: Theme): FluentTheme {
  return { ...(theme === "light" ? webLightTheme : webDarkTheme), ...ours };
}

export function tonesOf(theme: Theme): Tones {
  return tones[theme];
}

/** Set on the pane itself: Excel's theme need not be the system's. */
export function paneVariables(theme: Theme): CSSProperties {
  return { colorScheme: schemeOf(theme), ...variablesOf(theme) };
}

/** The same for what stands around the pane: the page of the add-in. */
export function dressPage(page: HTMLElement, theme: Theme): void {
  page.style.colorScheme = schemeOf(theme);
  for (const [name, value] of Object.entries(variablesOf(theme))) page.style.setProperty(name, value);
}

function schemeOf(theme: Theme): "light" | "dark" {
  return theme === "light" ? "light" : "dark";
}

function variablesOf(theme: Theme): Record<`--${string}`, string> {
  const { paper, ink, muted, accent, line, computed, trouble, grades } = tonesOf(theme);
  const variables: Record<`--${string}`, string> = {
    "--paper": paper,
    "--ink": ink,
    "--muted": muted,
    "--accent": accent,
    "--on-accent": paper,
    "--line": line,
    "--soft": computed,
    "--trouble": trouble,
  };
  grades.forEach(({ fill, ink: onFill }, index) => {
    variables[`--grade-${index + 1}`] = fill;
    variables[`--on-grade-${index + 1}`] = onFill;
  });
  return variables;
}

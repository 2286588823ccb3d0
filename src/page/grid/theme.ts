/** Univer's own controls in our accent; everything else of its theme stays. */
import { defaultTheme, type Theme } from "@univerjs/themes";

export const calmTheme: Theme = {
  ...defaultTheme,
  primary: {
    50: "#eef6f6",
    100: "#d9ecec",
    200: "#b6dada",
    300: "#8cc5c6",
    400: "#4f9fa3",
    500: "#1f7b81",
    600: "#0b5c63",
    700: "#094d53",
    800: "#073e43",
    900: "#053034",
  },
};

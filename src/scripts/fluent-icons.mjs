/**
 * In place of the index of @fluentui/react-icons, of which webpack would take 2 MB: the icons of the components that
 * the pane uses. A component that wants another one fails the build by its name.
 */
export { CheckmarkCircle12Filled } from "@fluentui/react-icons/svg/checkmark-circle";
export { ChevronDownRegular } from "@fluentui/react-icons/svg/chevron-down";
export { DiamondDismiss12Filled } from "@fluentui/react-icons/svg/diamond-dismiss";
export { DismissRegular } from "@fluentui/react-icons/svg/dismiss";
export { SearchRegular } from "@fluentui/react-icons/svg/search";
export { Warning12Filled } from "@fluentui/react-icons/svg/warning";
export { iconFilledClassName, iconRegularClassName } from "@fluentui/react-icons/utils";

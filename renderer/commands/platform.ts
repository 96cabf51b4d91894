/** Whether the keyboard is Apple's, where Command stands for Control. */
export const isMac: boolean = /Mac|iPhone|iPad/.test(navigator.userAgent);

/** The two channels between page and host under Electron: commands and their answers, and events. */
export const commandChannel = 'eavewright';
export const eventChannel = 'eavewright-event';

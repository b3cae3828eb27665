/** Names of the channels between window and main process; nothing else is sent or heard. */
export const CHANNELS = {
  call: 'plainwarmth:call',
  cancel: 'plainwarmth:cancel',
  progress: 'plainwarmth:progress',
  saveFile: 'plainwarmth:save-file',
  menu: 'plainwarmth:menu',
} as const;

import type { PictureSize } from '../../charts/frame/size.ts';

const NARROW_PIXELS = 1100;

/** In a narrow window smaller letters keep the names whole. */
export const sizeAtTable = (): PictureSize => (window.innerWidth < NARROW_PIXELS ? 'desk' : 'table');

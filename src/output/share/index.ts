export { MOST_CHARACTERS } from './format';
export { type QrCode, qrCode, qrSvg } from './qr';
export { isLink, type ReadLink, readLink } from './readLink';
export { type ShareOptions, sharedJob, writeLink } from './writeLink';

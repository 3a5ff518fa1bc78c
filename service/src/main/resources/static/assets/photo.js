// A photo made ready to be kept: its kind told by its bytes, a large one drawn smaller, so that a poor network carries it.

const MOST = 5 * 1024 * 1024; // bytes; what the service takes
const PLENTY = 1.5 * 1024 * 1024; // bytes; above this it is drawn smaller
const LONGEST = 2560; // pixels of the longer side, then
const QUALITY = 0.85;

/** What cannot be taken, in words. */
export class NoPhoto extends Error {}

/** The media type that the first bytes of a file tell; null where it is no photo. */
export function kindOf(bytes) {
  const [a, b, c, d] = new Uint8Array(bytes.slice(0, 4));
  if (a === 0xff && b === 0xd8) return 'image/jpeg';
  return a === 0x89 && b === 0x50 && c === 0x4e && d === 0x47 ? 'image/png' : null;
}

/** Width and height with the longer side at most so long, in the same proportion. */
export function within(width, height, longest) {
  const scale = Math.min(1, longest / Math.max(width, height));
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
}

/** The bytes of a chosen file as they are kept and sent, and their type. @throws NoPhoto in words where it cannot be taken */
export async function prepared(file) {
  const bytes = await file.arrayBuffer();
  const type = kindOf(bytes);
  if (!type) throw new NoPhoto('This is neither a JPEG nor a PNG.');
  if (bytes.byteLength > PLENTY) {
    const less = await smaller(file).catch(() => null);
    if (less && less.byteLength < bytes.byteLength) return { bytes: less, type: 'image/jpeg' };
  }
  if (bytes.byteLength > MOST) throw new NoPhoto('It has more than 5 MB, and this browser cannot make it smaller.');
  return { bytes, type };
}

/** The same picture with fewer pixels, the way up that it is shown, as a JPEG. */
async function smaller(file) {
  const picture = await createImageBitmap(file, { imageOrientation: 'from-image' });
  const size = within(picture.width, picture.height, LONGEST);
  const canvas = document.createElement('canvas');
  canvas.width = size.width;
  canvas.height = size.height;
  const drawing = canvas.getContext('2d');
  drawing.fillStyle = '#fff';
  drawing.fillRect(0, 0, size.width, size.height); // what shows through has a ground
  drawing.drawImage(picture, 0, 0, size.width, size.height);
  picture.close();
  const made = await new Promise((resolve) => { canvas.toBlob(resolve, 'image/jpeg', QUALITY); });
  return made && made.arrayBuffer();
}

/** Which way up a picture is: the orientation of EXIF, and how a shape is turned to draw it. Nothing else of EXIF is read. */

/** EXIF 2.32 (JEITA CP-3451E), 4.6.4 A, and TIFF 6.0, tag 274: where row 0 and column 0 of the pixels are as seen. */
export type Orientation = 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8;

/** How a shape that holds the pixels as stored is drawn: mirrored first, then turned clockwise (ECMA-376 part 1, 20.1.7.6). */
export interface Turned {
  readonly degrees: 0 | 90 | 180 | 270;
  readonly flipX: boolean;
  readonly flipY: boolean;
}

const TURNS: Readonly<Record<Orientation, Turned>> = {
  1: { degrees: 0, flipX: false, flipY: false },
  2: { degrees: 0, flipX: true, flipY: false },
  3: { degrees: 180, flipX: false, flipY: false },
  4: { degrees: 0, flipX: false, flipY: true },
  5: { degrees: 270, flipX: true, flipY: false },
  6: { degrees: 90, flipX: false, flipY: false },
  7: { degrees: 90, flipX: true, flipY: false },
  8: { degrees: 270, flipX: false, flipY: false },
};

export const turnedBy = (orientation: Orientation): Turned => TURNS[orientation];

/** The orientation whose shape is drawn so; 1 where it is turned by any other angle. */
export function orientationOf({
  degrees,
  flipX,
  flipY,
}: {
  degrees: number;
  flipX: boolean;
  flipY: boolean;
}): Orientation {
  // Mirrored both ways is turned by half.
  const [mirrored, angle] = flipX && flipY ? [false, (degrees + 180) % 360] : [flipX, degrees];
  const found = Object.entries(TURNS).find(
    ([, one]) => one.degrees === angle && one.flipX === mirrored && one.flipY === (flipY && !flipX),
  );
  return found === undefined ? 1 : (Number(found[0]) as Orientation);
}

/** Width and height are exchanged when it is seen. */
export const isOnItsSide = (orientation: Orientation): boolean => orientation >= 5;

const TAG = 274;
const SHORT = 3;
const ENTRY_SIZE = 12;

/**
 * The orientation that a TIFF structure (the contents of EXIF) gives in its first directory; 1 where it gives none that
 * can be read: such a picture is shown as its pixels are stored.
 */
export function orientationIn(tiff: Uint8Array): Orientation {
  const view = new DataView(tiff.buffer, tiff.byteOffset, tiff.byteLength);
  const order = tiff.length < 8 ? 0 : view.getUint16(0);
  if (order !== 0x4949 && order !== 0x4d4d) return 1;
  const little = order === 0x4949;
  const directory = view.getUint32(4, little);
  if (view.getUint16(2, little) !== 42 || directory + 2 > tiff.length) return 1;
  const count = view.getUint16(directory, little);
  for (let i = 0; i < count; i++) {
    const at = directory + 2 + i * ENTRY_SIZE;
    if (at + ENTRY_SIZE > tiff.length) return 1;
    if (view.getUint16(at, little) !== TAG) continue;
    const value = view.getUint16(at + 8, little);
    const isOne = view.getUint16(at + 2, little) === SHORT && view.getUint32(at + 4, little) === 1;
    return isOne && value >= 1 && value <= 8 ? (value as Orientation) : 1;
  }
  return 1;
}

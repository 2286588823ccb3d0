/** A picture as a file: SVG and PNG, by data: addresses, since the page's policy knows no blob:. */

/** Pixels of the PNG for one of the picture's. */
const scale = 2;

export function saveSvg(svg: SVGSVGElement, name: string): void {
  save(addressOf(svg), `${name}.svg`);
}

/** @throws Error where the browser cannot draw it */
export async function savePng(svg: SVGSVGElement, name: string, paper: string): Promise<void> {
  const picture = new Image();
  const width = svg.width.baseVal.value;
  const height = svg.height.baseVal.value;
  picture.src = addressOf(svg);
  await picture.decode();
  const canvas = document.createElement("canvas");
  canvas.width = width * scale;
  canvas.height = height * scale;
  const drawing = canvas.getContext("2d");
  if (drawing === null) throw new Error("This browser draws no pictures.");
  drawing.fillStyle = paper;
  drawing.fillRect(0, 0, canvas.width, canvas.height);
  drawing.drawImage(picture, 0, 0, canvas.width, canvas.height);
  save(canvas.toDataURL("image/png"), `${name}.png`);
}

function addressOf(svg: SVGSVGElement): string {
  return `data:image/svg+xml;charset=utf-8,${encodeURIComponent(new XMLSerializer().serializeToString(svg))}`;
}

function save(address: string, name: string): void {
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
}

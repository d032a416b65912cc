import { areaPath } from '../drawing/contour';
import type { Frame } from '../drawing/frame';
import type { RoundScene } from '../round-scene';
import type { StressPicture, StressScene } from '../stress-scene';
import { cellOn, type WaterScene } from '../water-scene';

/** Colours of the page, so that the picture follows it into the dark. */
export interface Palette {
  paper: string;
  ink: string;
  cob: string;
  straw: string;
  stone: string;
  timber: string;
  glass: string;
  water: [string, string, string];
}

export function paletteOf(element: Element): Palette {
  const style = getComputedStyle(element);
  const of = (name: string) => style.getPropertyValue(name).trim();
  return {
    paper: of('--sheet'), ink: of('--ink'), cob: of('--cob'), straw: of('--straw'), stone: of('--stone'), timber: of('--timber'), glass: of('--woad'),
    water: [of('--water-1'), of('--water-2'), of('--water-3')],
  };
}

const wide = 3072;
const high = 512;

type Pencil = CanvasRenderingContext2D;

function sheet(): [HTMLCanvasElement, Pencil] {
  return canvas(wide, high);
}

function canvas(width: number, height: number): [HTMLCanvasElement, Pencil] {
  const made = document.createElement('canvas');
  made.width = width;
  made.height = height;
  const pencil = made.getContext('2d');
  if (pencil === null) throw new Error('no canvas');
  return [made, pencil];
}

/** A hatching that fits edge to edge. */
function hatch(on: Pencil, size: number, draw: (pencil: Pencil) => void): CanvasPattern {
  const [tile, pencil] = canvas(size, size);
  draw(pencil);
  return on.createPattern(tile, 'repeat') ?? (() => { throw new Error('no pattern'); })();
}

function lines(ink: string, width: number, ...pieces: [number, number, number, number][]): (pencil: Pencil) => void {
  return (pencil) => {
    pencil.strokeStyle = ink;
    pencil.lineWidth = width;
    pencil.beginPath();
    for (const [x, y, toX, toY] of pieces) {
      pencil.moveTo(x, y);
      pencil.lineTo(toX, toY);
    }
    pencil.stroke();
  };
}

function dots(ink: string, radius: number, ...at: [number, number][]): (pencil: Pencil) => void {
  return (pencil) => {
    pencil.fillStyle = ink;
    for (const [x, y] of at) {
      pencil.beginPath();
      pencil.arc(x, y, radius, 0, 2 * Math.PI);
      pencil.fill();
    }
  };
}

const rising = (n: number): [number, number, number, number][] => [[-n, 2 * n, 2 * n, -n], [-n, n, n, -n], [0, 2 * n, 2 * n, 0]];
const falling = (n: number): [number, number, number, number][] => [[-n, -n, 2 * n, 2 * n], [0, -n, 2 * n, n], [-n, 0, n, 2 * n]];

/** The wall laid flat as it is built: clay with straw in it. */
export function builtSkin(palette: Palette): HTMLCanvasElement {
  const [made, pencil] = sheet();
  pencil.fillStyle = palette.cob;
  pencil.fillRect(0, 0, wide, high);
  pencil.globalAlpha = 0.5;
  pencil.fillStyle = hatch(pencil, 256, lines(palette.straw, 2, [22, 30, 60, 42], [140, 14, 172, 2], [206, 64, 240, 78], [76, 96, 104, 74], [170, 132, 208, 126], [14, 150, 46, 160], [110, 190, 138, 176], [220, 206, 250, 216], [60, 230, 88, 244]));
  pencil.fillRect(0, 0, wide, high);
  return made;
}

/** What the wall carries, hatched and toned band by band as on its sheet. */
export function stressSkin(palette: Palette, scene: RoundScene, stress: StressScene, picture: StressPicture): HTMLCanvasElement {
  const [made, pencil] = sheet();
  pencil.fillStyle = palette.cob;
  pencil.fillRect(0, 0, wide, high);
  const k = wide / scene.ring;
  const frame: Frame = { k, width: wide, height: high + 0.5, x: (metres) => metres * k, y: (metres) => ((scene.top - metres) / (scene.top - scene.bottom)) * high };
  const { ink } = palette;
  const hatches = [
    hatch(pencil, 30, lines(ink, 2.4, ...rising(30))),
    hatch(pencil, 30, lines(ink, 2.4, ...falling(30))),
    hatch(pencil, 20, lines(ink, 2.4, [0, 10, 20, 10])),
    hatch(pencil, 20, lines(ink, 4, [10, 0, 10, 20])),
    hatch(pencil, 10, lines(ink, 4, ...rising(10))),
  ];
  stress.bands.forEach((band, i) => {
    const area = new Path2D(areaPath(frame, picture, scene.ring, 'pressed', band.from));
    pencil.globalAlpha = 0.13;
    pencil.fillStyle = palette.straw;
    pencil.fill(area);
    pencil.globalAlpha = 0.72;
    pencil.fillStyle = hatches[Math.min(i, 4)] ?? ink;
    pencil.fill(area);
  });
  pencil.globalAlpha = 0.9;
  pencil.fillStyle = hatch(pencil, 24, dots(ink, 4.5, [6, 6], [18, 18]));
  pencil.fill(new Path2D(areaPath(frame, picture, scene.ring, 'pulled', stress.tension.from)));
  return made;
}

/** The water of the wall on a day, every lift of every stretch hatched. */
export function waterSkin(palette: Palette, scene: RoundScene, water: WaterScene, day: number): HTMLCanvasElement {
  const [made, pencil] = sheet();
  pencil.fillStyle = palette.cob;
  pencil.fillRect(0, 0, wide, high);
  const { ink } = palette;
  const hatches = [
    null,
    hatch(pencil, 28, dots(ink, 2.4, [7, 7], [21, 21])),
    hatch(pencil, 18, dots(ink, 2.6, [5, 5], [14, 14])),
    hatch(pencil, 24, lines(ink, 2, [0, 12, 14, 12])),
    hatch(pencil, 14, lines(ink, 2, [0, 7, 14, 7])),
    hatch(pencil, 12, lines(ink, 3, [0, 6, 12, 6])),
  ];
  const y = (metres: number) => ((scene.top - metres) / (scene.top - scene.bottom)) * high;
  for (const lift of water.lifts) {
    water.bays.forEach((bay, b) => {
      const cell = cellOn(water, lift, b, day);
      if (cell === null) return;
      for (const [from, to] of bay.boxes) {
        const [left, width, top, height] = [(from / scene.ring) * wide, ((to - from) / scene.ring) * wide, y(lift.top), y(lift.bottom) - y(lift.top)];
        pencil.globalAlpha = 1;
        pencil.fillStyle = palette.water[Math.min(2, cell.band >> 1)] ?? palette.cob;
        pencil.fillRect(left, top, width, height);
        const pattern = hatches[cell.band];
        if (pattern) {
          pencil.globalAlpha = 0.6;
          pencil.fillStyle = pattern;
          pencil.fillRect(left, top, width, height);
        }
        pencil.globalAlpha = 0.55;
        pencil.strokeStyle = ink;
        pencil.lineWidth = 2;
        pencil.strokeRect(left, top, width, height);
      }
    });
  }
  return made;
}

/** What a cut shows: cob with lines to the right, stone with crossed ones, timber with grain. */
export function cutSkin(palette: Palette, of: 'wall' | 'stem' | 'timber'): HTMLCanvasElement {
  const [made, pencil] = canvas(64, 64);
  pencil.fillStyle = of === 'wall' ? palette.water[1] : of === 'stem' ? palette.stone : palette.timber;
  pencil.fillRect(0, 0, 64, 64);
  pencil.globalAlpha = 0.7;
  if (of === 'wall') lines(palette.ink, 2, ...rising(64))(pencil);
  else if (of === 'stem') lines(palette.ink, 2, ...rising(64), ...falling(64))(pencil);
  else lines(palette.ink, 2, ...falling(16).flatMap(([x, y, toX, toY]): [number, number, number, number][] => [0, 16, 32, 48].flatMap((dx) => [0, 16, 32, 48].map((dy): [number, number, number, number] => [x + dx, y + dy, toX + dx, toY + dy]))))(pencil);
  return made;
}

/** The ground: paper that darkens a little under the house, with the way north. */
export function groundSkin(palette: Palette, north: string): HTMLCanvasElement {
  const size = 1024;
  const [made, pencil] = canvas(size, size);
  const shade = pencil.createRadialGradient(size / 2, size / 2, size * 0.12, size / 2, size / 2, size / 2);
  pencil.globalAlpha = 1;
  shade.addColorStop(0, palette.straw);
  shade.addColorStop(1, 'transparent');
  pencil.globalAlpha = 0.34;
  pencil.fillStyle = shade;
  pencil.fillRect(0, 0, size, size);
  pencil.globalAlpha = 0.9;
  pencil.strokeStyle = pencil.fillStyle = palette.ink;
  pencil.lineWidth = 2;
  pencil.beginPath();
  pencil.arc(size / 2, size / 2, size * 0.43, 0, 2 * Math.PI);
  pencil.stroke();
  for (let i = 0; i < 72; i++) {
    const [sin, cos] = [Math.sin((i * Math.PI) / 36), Math.cos((i * Math.PI) / 36)];
    const inner = i % 18 === 0 ? 0.405 : i % 9 === 0 ? 0.415 : 0.423;
    pencil.beginPath();
    pencil.moveTo(size * (0.5 + inner * sin), size * (0.5 - inner * cos));
    pencil.lineTo(size * (0.5 + 0.43 * sin), size * (0.5 - 0.43 * cos));
    pencil.stroke();
  }
  pencil.font = `650 44px 'Source Sans 3', sans-serif`;
  pencil.textAlign = 'center';
  pencil.fillText(north, size / 2, size * 0.057);
  return made;
}

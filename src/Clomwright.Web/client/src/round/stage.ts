import * as three from 'three';
import { floats, type Cut, type RoundKind, type RoundScene, type RoundSun, type Stand } from '../round-scene';
import { bodiesOf, lineOf, materialsOf, type Body, type CutGroup, type Materials } from './bodies';
import { Cuts } from './cuts';
import { cutSkin, groundSkin, type Palette } from './skins';

/** What an old machine draws without effort. */
const finest = 1.5;
const eyeHeight = 1.55;

/** What is seen and how. */
export interface Look {
  stand: Stand;
  /** Bearing of the eye from the house, of the way looked in the room, degrees clockwise from north. */
  bearing: number;
  /** Over the horizon, degrees; in the room of the way looked. */
  tilt: number;
  /** Distance in radii of the house. */
  away: number;
  cut: Cut;
  /** Share of the way of the cut, 0 to 1. */
  at: number;
  /** Bearing that an upright cut faces, degrees. */
  facing: number;
  /** The wall is laid up to here, m; null for the finished house. */
  laid: number | null;
  hidden: ReadonlySet<RoundKind>;
}

/** What was touched. */
export interface Touched {
  label: string;
  /** On the wall: shares of the ring from the zero mark and of the height of the cob. */
  place: { along: number; up: number } | null;
}

/** The picture. It is drawn when something changed, never else. */
export class Stage {
  private readonly renderer: three.WebGLRenderer;
  private readonly scene = new three.Scene();
  private readonly camera = new three.PerspectiveCamera(32, 1, 0.05, 400);
  private readonly sunlight = new three.DirectionalLight('#fff4dd', 1.9);
  private readonly materials: Materials;
  private readonly bodies: Body[];
  private readonly cuts: Cuts;
  private readonly cutPlane = new three.Plane(new three.Vector3(0, 0, -1), 0);
  private readonly laidPlane = new three.Plane(new three.Vector3(0, 0, -1), 0);
  /** Nothing is drawn under the ground. */
  private readonly groundPlane = new three.Plane(new three.Vector3(0, 0, 1), 0);
  private readonly lit = new three.Group();
  private readonly deck: three.LineSegments | null;
  private look: Look | null = null;
  private waiting = 0;

  /** @throws where the browser has no WebGL. */
  constructor(
    private readonly canvas: HTMLCanvasElement,
    private readonly house: RoundScene,
    private readonly palette: Palette,
    north: string,
  ) {
    this.renderer = new three.WebGLRenderer({ canvas, antialias: true, alpha: true, stencil: true, powerPreference: 'low-power' });
    this.renderer.localClippingEnabled = true;
    this.renderer.setClearColor(0, 0);
    this.camera.up.set(0, 0, 1);
    this.materials = materialsOf(palette);
    this.bodies = bodiesOf(house, this.materials);
    this.deck = lineOf(house.deck, this.materials.ink);
    const texture = (of: CutGroup) => repeated(cutSkin(palette, of), of === 'timber' ? 240 : 260);
    this.groundPlane.constant = -house.ground;
    this.cuts = new Cuts(house.radius * 8, this.groundPlane, { wall: texture('wall'), stem: texture('stem'), timber: texture('timber') });
    this.scene.add(...this.bodies.map((body) => body.mesh), this.cuts.group, this.lit, ...(this.deck === null ? [] : [this.deck]), ...this.grounds(north));
    this.scene.add(new three.HemisphereLight('#fffaf0', '#c9a878', 1.9), this.sunlight, this.sunlight.target);
    this.sunlight.target.position.set(...house.middle);
    this.lightFrom(null);
  }

  /** How many bodies are drawn. */
  get count(): number {
    return this.bodies.filter((body) => body.mesh.visible).length;
  }

  /** How many triangles the house has. */
  get triangles(): number {
    return this.bodies.reduce((sum, body) => sum + (body.mesh.geometry.getIndex()?.count ?? 0) / 3, 0);
  }

  /** Lays a picture of the unrolled wall round it. */
  dress(picture: HTMLCanvasElement): void {
    const { wall } = this.materials.of;
    wall.map?.dispose();
    const texture = new three.CanvasTexture(picture);
    texture.colorSpace = three.SRGBColorSpace;
    texture.wrapS = three.RepeatWrapping;
    texture.anisotropy = Math.min(8, this.renderer.capabilities.getMaxAnisotropy());
    wall.map = texture;
    wall.needsUpdate = true;
    this.draw();
  }

  see(look: Look): void {
    this.look = look;
    const { house, materials } = this;
    const growing = look.laid !== null;
    for (const { scene, mesh } of this.bodies) {
      const later = growing && (scene.kind === 'beam' || scene.kind === 'roof');
      mesh.visible = !look.hidden.has(scene.kind) && !later && !(growing && scene.setAt !== null && scene.setAt > (look.laid ?? 0) - 1e-3) && !(growing && scene.kind === 'wall' && (look.laid ?? 0) <= house.bottom);
    }
    if (this.deck !== null) this.deck.visible = !growing && !look.hidden.has('roof');
    const planes = this.planes(look);
    const wallOnly = growing ? [...planes, this.laidPlane] : planes;
    this.laidPlane.constant = look.laid ?? 0;
    for (const [kind, material] of Object.entries(materials.of)) material.clippingPlanes = kind === 'wall' ? wallOnly : kind === 'stem' ? [...planes, this.groundPlane] : planes;
    materials.glass.clippingPlanes = materials.outline.clippingPlanes = planes;
    materials.ink.clippingPlanes = materials.faint.clippingPlanes = [...wallOnly, this.groundPlane];
    this.cuts.show(this.bodies, (group) => (group === 'wall' ? wallOnly : planes));
    this.aim(look);
    this.draw();
  }

  /** The sun of a moment; null for even light. */
  shine(sun: RoundSun | null): void {
    for (const child of this.lit.children as three.Mesh[]) child.geometry.dispose();
    this.lit.clear();
    this.lightFrom(sun?.toward ?? null);
    if (sun !== null && sun.patches !== '') {
      const geometry = new three.BufferGeometry();
      geometry.setAttribute('position', new three.BufferAttribute(floats(sun.patches), 3));
      const patch = new three.Mesh(geometry, new three.MeshBasicMaterial({ color: '#ffd879', side: three.DoubleSide, transparent: true, opacity: 0.82, polygonOffset: true, polygonOffsetFactor: -1, polygonOffsetUnits: -4 }));
      const edge = lineOf(sun.edges, new three.LineBasicMaterial({ color: this.palette.ink }));
      patch.raycast = () => {};
      this.lit.add(patch, ...(edge === null ? [] : [edge]));
    }
    this.draw();
  }

  /** Takes the size that the page gives it. */
  fit(width: number, height: number): void {
    if (width < 1 || height < 1) return;
    this.renderer.setPixelRatio(Math.min(devicePixelRatio, finest));
    this.renderer.setSize(width, height, false);
    this.camera.aspect = width / height;
    if (this.look !== null) this.aim(this.look);
    this.draw();
  }

  /** What lies at a place of the picture, from -1 to 1 to the right and up; null for nothing. */
  touch(x: number, y: number): Touched | null {
    const ray = new three.Raycaster();
    ray.setFromCamera(new three.Vector2(x, y), this.camera);
    const seen = this.bodies.filter((body) => body.mesh.visible);
    for (const hit of ray.intersectObjects(seen.map((body) => body.mesh), false)) {
      const body = seen.find((one) => one.mesh === hit.object);
      const planes = body?.mesh.material.clippingPlanes ?? [];
      if (body === undefined || planes.some((plane) => plane.distanceToPoint(hit.point) < 0)) continue;
      return { label: body.scene.label, place: body.scene.kind === 'wall' && hit.uv ? { along: ((hit.uv.x % 1) + 1) % 1, up: hit.uv.y } : null };
    }
    return null;
  }

  /** The picture as it is, on paper. */
  still(width: number): HTMLCanvasElement {
    const { canvas, renderer } = this;
    const [w, h, ratio] = [canvas.clientWidth, canvas.clientHeight, renderer.getPixelRatio()];
    renderer.setPixelRatio(width / Math.max(1, w));
    renderer.setSize(w, h, false);
    renderer.setClearColor(this.palette.paper, 1);
    renderer.render(this.scene, this.camera);
    const taken = document.createElement('canvas');
    [taken.width, taken.height] = [canvas.width, canvas.height];
    taken.getContext('2d')?.drawImage(canvas, 0, 0);
    renderer.setClearColor(0, 0);
    renderer.setPixelRatio(ratio);
    renderer.setSize(w, h, false);
    this.draw();
    return taken;
  }

  close(): void {
    cancelAnimationFrame(this.waiting);
    this.cuts.clear();
    this.scene.traverse((object) => {
      if (object instanceof three.Mesh || object instanceof three.LineSegments) object.geometry.dispose();
    });
    for (const material of [...Object.values(this.materials.of), this.materials.glass, this.materials.ink, this.materials.faint, this.materials.outline]) material.dispose();
    this.materials.of.wall.map?.dispose();
    this.renderer.dispose();
  }

  private draw(): void {
    this.waiting ||= requestAnimationFrame(() => {
      this.waiting = 0;
      this.renderer.render(this.scene, this.camera);
    });
  }

  private aim({ stand, bearing, tilt, away }: Look): void {
    const { camera, house } = this;
    const [east, north, up] = house.middle;
    const [b, t] = [(bearing * Math.PI) / 180, (tilt * Math.PI) / 180];
    const way = new three.Vector3(Math.cos(t) * Math.sin(b), Math.cos(t) * Math.cos(b), Math.sin(t));
    if (stand === 'inside') {
      camera.fov = 72;
      camera.position.set(east, north, eyeHeight);
      camera.lookAt(east + way.x, north + way.y, eyeHeight + way.z);
    } else {
      // A tall window sees as much to the sides as a wide one.
      camera.fov = camera.aspect >= 1.15 ? 32 : (2 * 180 * Math.atan(Math.tan((16 * Math.PI) / 180) * (1.15 / camera.aspect))) / Math.PI;
      camera.position.set(east, north, up).addScaledVector(way, house.radius * away);
      camera.lookAt(east, north, up);
    }
    camera.updateProjectionMatrix();
  }

  private planes({ cut, at, facing }: Look): three.Plane[] {
    if (cut === 'whole') return [];
    const [east, north] = this.house.middle;
    if (cut === 'level') {
      const [low, high] = [this.house.ground, this.house.middle[2] + this.house.radius * 0.45];
      this.cutPlane.set(new three.Vector3(0, 0, -1), low + (high - low) * at);
    } else {
      const f = (facing * Math.PI) / 180;
      const away = new three.Vector3(-Math.sin(f), -Math.cos(f), 0);
      this.cutPlane.setFromNormalAndCoplanarPoint(away, new three.Vector3(east, north, 0).addScaledVector(away, -this.house.radius * (1 - 2 * at)));
    }
    return [this.cutPlane];
  }

  private lightFrom(toward: readonly [number, number, number] | null): void {
    const [x, y, z] = toward ?? [-0.5, -0.62, 0.6];
    const [east, north, up] = this.house.middle;
    this.sunlight.position.set(east + 20 * x, north + 20 * y, up + 20 * z);
  }

  private grounds(north: string): three.Object3D[] {
    const { house, palette } = this;
    const [east, n] = house.middle;
    const across = house.radius * 2.3;
    const earth = new three.Mesh(new three.PlaneGeometry(across, across), new three.MeshBasicMaterial({ map: colored(groundSkin(palette, north)), transparent: true, depthWrite: false }));
    earth.position.set(east, n, house.ground);
    earth.renderOrder = -2;
    const floor = new three.Mesh(new three.ShapeGeometry(new three.Shape(house.floor.map(([x, y]) => new three.Vector2(x, y)))), new three.MeshBasicMaterial({ color: palette.paper, side: three.DoubleSide }));
    floor.renderOrder = -1;
    earth.raycast = floor.raycast = () => {};
    return [earth, floor];
  }
}

function colored(picture: HTMLCanvasElement): three.CanvasTexture {
  const texture = new three.CanvasTexture(picture);
  texture.colorSpace = three.SRGBColorSpace;
  texture.anisotropy = 4;
  return texture;
}

function repeated(picture: HTMLCanvasElement, times: number): three.CanvasTexture {
  const texture = colored(picture);
  texture.wrapS = texture.wrapT = three.RepeatWrapping;
  texture.repeat.set(times, times);
  return texture;
}

import * as three from 'three';
import { floats, signed, wholes, type RoundBody, type RoundKind, type RoundScene } from '../round-scene';
import type { Palette } from './skins';

/** What is cut together and shows one hatching at the cut. */
export type CutGroup = 'wall' | 'stem' | 'timber';

export interface Body {
  readonly scene: RoundBody;
  readonly mesh: three.Mesh<three.BufferGeometry, three.MeshLambertMaterial>;
  readonly lines: three.LineSegments[];
  readonly cut: CutGroup | null;
}

/** Materials shared by all bodies, with the planes that cut them. */
export interface Materials {
  readonly of: Record<RoundKind, three.MeshLambertMaterial>;
  readonly glass: three.MeshLambertMaterial;
  readonly ink: three.LineBasicMaterial;
  readonly faint: three.LineBasicMaterial;
  /** Ink round what has no sharp edge. */
  readonly outline: three.MeshBasicMaterial;
}

export function materialsOf(palette: Palette): Materials {
  const solid = (color: string) => new three.MeshLambertMaterial({ color, polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1 });
  const timber = () => solid(palette.timber);
  const header = timber();
  header.polygonOffsetFactor = header.polygonOffsetUnits = 0;
  const outline = new three.MeshBasicMaterial({ color: palette.ink, side: three.BackSide });
  outline.onBeforeCompile = (shader) => {
    // A thin skin behind the body, about as wide as a pen at any distance.
    shader.vertexShader = shader.vertexShader.replace(
      '#include <begin_vertex>',
      'vec3 transformed = position; transformed += normalize(normal) * (0.0016 * length((modelViewMatrix * vec4(position, 1.0)).xyz));',
    );
  };
  return {
    of: { wall: solid('#ffffff'), stem: solid(palette.stone), frames: timber(), headers: header, embeds: solid(palette.straw), tees: timber(), beam: timber(), roof: timber() },
    glass: new three.MeshLambertMaterial({ color: palette.glass, transparent: true, opacity: 0.24, depthWrite: false }),
    ink: new three.LineBasicMaterial({ color: palette.ink }),
    faint: new three.LineBasicMaterial({ color: palette.ink, transparent: true, opacity: 0.34 }),
    outline,
  };
}

export function bodiesOf(scene: RoundScene, materials: Materials): Body[] {
  return scene.bodies.map((body) => {
    const geometry = new three.BufferGeometry();
    geometry.setAttribute('position', new three.BufferAttribute(floats(body.points), 3));
    const turned = new three.InterleavedBuffer(signed(body.normals), 4);
    geometry.setAttribute('normal', new three.InterleavedBufferAttribute(turned, 3, 0, true));
    if (body.places !== '') geometry.setAttribute('uv', new three.BufferAttribute(floats(body.places), 2));
    geometry.setIndex(new three.BufferAttribute(wholes(body.triangles), 1));
    const glass = body.kind === 'frames' && body.name.startsWith('glass ');
    const mesh = new three.Mesh(geometry, glass ? materials.glass : materials.of[body.kind]);
    mesh.name = body.name;
    if (body.kind === 'roof') {
      const outline = new three.Mesh(geometry, materials.outline);
      outline.raycast = () => {};
      mesh.add(outline);
    }
    const lines = [lineOf(body.edges, materials.ink), lineOf(body.joints, materials.faint)].filter((line) => line !== null);
    mesh.add(...lines);
    const cut: CutGroup | null = body.kind === 'wall' ? 'wall' : body.kind === 'stem' ? 'stem' : body.kind === 'frames' || body.kind === 'embeds' ? null : 'timber';
    return { scene: body, mesh, lines, cut };
  });
}

export function lineOf(pieces: string, material: three.LineBasicMaterial): three.LineSegments | null {
  if (pieces === '') return null;
  const geometry = new three.BufferGeometry();
  geometry.setAttribute('position', new three.BufferAttribute(floats(pieces), 3));
  const line = new three.LineSegments(geometry, material);
  line.raycast = () => {};
  return line;
}

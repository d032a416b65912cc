import * as three from 'three';
import { mergeGeometries } from 'three/addons/utils/BufferGeometryUtils.js';
import type { Body, CutGroup } from './bodies';

/**
 * Closes what planes cut open. Where more backs than fronts of a closed body lie behind a point of the picture, the plane passes through the body there: backs are counted up and
 * fronts down, and the plane is drawn where something is left.
 */
export class Cuts {
  readonly group = new three.Group();
  private made = '';

  constructor(
    private readonly size: number,
    private readonly ground: three.Plane,
    private readonly skins: Record<CutGroup, three.Texture>,
  ) {}

  /** Lays the cut faces of what is seen. */
  show(bodies: readonly Body[], planesOf: (group: CutGroup) => readonly three.Plane[]): void {
    const groups = (['stem', 'wall', 'timber'] as const).map((group) => ({ group, bodies: bodies.filter((body) => body.cut === group && body.mesh.visible), planes: planesOf(group) }));
    const key = groups.map(({ bodies: seen, planes }) => `${seen.map((body) => body.mesh.id).join(',')}/${planes.length}`).join(';');
    if (key === this.made) {
      this.place();
      return;
    }
    this.clear();
    this.made = key;
    let order = 10;
    for (const { group, bodies: seen, planes } of groups) {
      const positions = seen.map(({ mesh }) => {
        const bare = new three.BufferGeometry();
        bare.setAttribute('position', mesh.geometry.getAttribute('position'));
        bare.setIndex(mesh.geometry.getIndex());
        return bare;
      });
      const whole = positions.length === 0 || planes.length === 0 ? null : mergeGeometries(positions);
      if (whole === null) continue;
      for (const plane of planes) {
        this.group.add(counted(whole, plane, three.BackSide, three.IncrementWrapStencilOp, order), counted(whole, plane, three.FrontSide, three.DecrementWrapStencilOp, order));
        const face = new three.Mesh(
          new three.PlaneGeometry(this.size, this.size),
          new three.MeshBasicMaterial({
            map: this.skins[group], clippingPlanes: [...planes.filter((other) => other !== plane), this.ground],
            stencilWrite: true, stencilRef: 0, stencilFunc: three.NotEqualStencilFunc, stencilFail: three.ReplaceStencilOp, stencilZFail: three.ReplaceStencilOp, stencilZPass: three.ReplaceStencilOp,
          }),
        );
        face.userData.plane = plane;
        face.renderOrder = order + 1;
        face.onAfterRender = (renderer) => renderer.clearStencil();
        this.group.add(face);
        order += 2;
      }
    }
    this.place();
  }

  clear(): void {
    for (const child of this.group.children as three.Mesh[]) {
      child.geometry.dispose();
      (child.material as three.Material).dispose();
    }
    this.group.clear();
    this.made = '';
  }

  private place(): void {
    for (const face of this.group.children) {
      const plane = face.userData.plane as three.Plane | undefined;
      if (plane === undefined) continue;
      plane.coplanarPoint(face.position);
      face.quaternion.setFromUnitVectors(new three.Vector3(0, 0, 1), plane.normal.clone().negate());
    }
  }
}

function counted(geometry: three.BufferGeometry, plane: three.Plane, side: three.Side, op: three.StencilOp, order: number): three.Mesh {
  const mesh = new three.Mesh(
    geometry,
    new three.MeshBasicMaterial({
      side, clippingPlanes: [plane], depthWrite: false, depthTest: false, colorWrite: false,
      stencilWrite: true, stencilFunc: three.AlwaysStencilFunc, stencilFail: op, stencilZFail: op, stencilZPass: op,
    }),
  );
  mesh.renderOrder = order;
  mesh.raycast = () => {};
  return mesh;
}

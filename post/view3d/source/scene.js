// SPDX-License-Identifier: GPL-2.0-or-later
// The only file that knows the graphics library: surfaces and lines in, pixels out.
import '@kitware/vtk.js/Rendering/OpenGL/Camera';
import '@kitware/vtk.js/Rendering/OpenGL/Renderer';
import '@kitware/vtk.js/Rendering/OpenGL/Actor';
import '@kitware/vtk.js/Rendering/OpenGL/PolyDataMapper';
import vtkOpenGLRenderWindow from '@kitware/vtk.js/Rendering/OpenGL/RenderWindow';
import vtkRenderWindow from '@kitware/vtk.js/Rendering/Core/RenderWindow';
import vtkRenderer from '@kitware/vtk.js/Rendering/Core/Renderer';
import vtkActor from '@kitware/vtk.js/Rendering/Core/Actor';
import vtkMapper from '@kitware/vtk.js/Rendering/Core/Mapper';
import vtkPolyData from '@kitware/vtk.js/Common/DataModel/PolyData';
import vtkDataArray from '@kitware/vtk.js/Common/Core/DataArray';
import vtkLookupTable from '@kitware/vtk.js/Common/Core/LookupTable';

export function canDraw() {
  try {
    return document.createElement('canvas').getContext('webgl2') !== null;
  } catch {
    return false;
  }
}

const ink = [33, 36, 42], white = [255, 255, 255];
const channels = (hex) => [1, 3, 5].map((at) => parseInt(hex.slice(at, at + 2), 16));

// Cells as the library wants them: a count before the points of each.
function cells(points, perCell) {
  const list = new Uint32Array((points.length / perCell) * (perCell + 1));
  for (let c = 0, at = 0; c < points.length; c += perCell) {
    list[at++] = perCell;
    for (let k = 0; k < perCell; ++k) list[at++] = points[c + k];
  }
  return list;
}

const lit = { ambient: 0.5, diffuse: 0.5, specular: 0 }, flat = { lighting: false };

// One thing that is drawn; kept for all that it shows over time, so that nothing piles up in the graphics memory.
class Drawn {
  constructor(renderer, look) {
    this.data = vtkPolyData.newInstance();
    this.mapper = vtkMapper.newInstance({ interpolateScalarsBeforeMapping: true, useLookupTableScalarRange: true });
    this.mapper.setInputData(this.data);
    this.actor = vtkActor.newInstance();
    this.actor.setMapper(this.mapper);
    this.actor.getProperty().set(look);
    renderer.addActor(this.actor);
  }

  setPoints(points) {
    this.data.getPoints().setData(Float32Array.from(points), 3);
    this.actor.setVisibility(points.length > 0);
  }

  setSurface(surface, table) {
    this.setPoints(surface.points);
    this.data.getPolys().setData(cells(surface.triangles, 3));
    this.data.getPointData().setNormals(vtkDataArray.newInstance({ name: 'normals', numberOfComponents: 3,
      values: Float32Array.from(surface.normals) }));
    this.data.getPointData().setScalars(vtkDataArray.newInstance({ name: 'value', numberOfComponents: 1,
      values: Float32Array.from(surface.values) }));
    this.mapper.setLookupTable(table);
    this.data.modified();
  }

  setLines(points) {
    this.setPoints(points);
    this.data.getLines().setData(cells(Uint32Array.from({ length: points.length / 3 }, (_, i) => i), 2));
    this.data.modified();
  }

  // Lines in front of the face that they lie in.
  asLines(forward) {
    this.mapper.setScalarVisibility(false);
    this.mapper.setResolveCoincidentTopologyToPolygonOffset();
    this.mapper.setRelativeCoincidentTopologyLineOffsetParameters(-forward, -2 * forward);
    return this;
  }
}

export class Scene {
  constructor(container, colours) {
    this.colours = colours;
    this.window = vtkRenderWindow.newInstance();
    this.renderer = vtkRenderer.newInstance();
    this.window.addRenderer(this.renderer);
    this.view = vtkOpenGLRenderWindow.newInstance();
    this.view.setContainer(container);
    this.window.addView(this.view);
    this.renderer.getActiveCamera().setParallelProjection(true);
    this.skin = new Drawn(this.renderer, lit);
    this.faces = new Drawn(this.renderer, flat);
    const lines = (colour, lineWidth, forward) =>
      new Drawn(this.renderer, { ...flat, lineWidth, color: colour.map((one) => one / 255) }).asLines(forward);
    this.edges = lines(ink, 1.4, 2);
    this.open = lines(ink, 4, 3);
    this.dashes = lines(white, 2, 5);
  }

  resize([width, height], pixelRatio) {
    this.view.setSize(Math.max(1, Math.round(width * pixelRatio)), Math.max(1, Math.round(height * pixelRatio)));
  }

  background([red, green, blue]) {
    this.renderer.setBackground(red / 255, green / 255, blue / 255);
  }

  // Colours over 0 to range.top, and the colour of what lies above it up to range.highest.
  table(range) {
    const shades = this.colours.ramp.map(channels);
    const above = channels(this.colours.above);
    const n = Math.max(shades.length, Math.min(4096, Math.ceil((shades.length * range.highest) / range.top - 1e-9)));
    while (shades.length < n) shades.push(above);
    const table = vtkLookupTable.newInstance();
    table.setTable(vtkDataArray.newInstance({ numberOfComponents: 4,
      values: Uint8Array.from(shades.flatMap((shade) => [...shade, 255])) }));
    table.setMappingRange(0, (range.top * n) / this.colours.ramp.length);
    return table;
  }

  show({ skin, faces, lines }, range) {
    const table = this.table(range);
    this.skin.setSurface(skin, table);
    this.faces.setSurface(faces, table);
    this.edges.setLines(lines.edges);
    this.open.setLines(lines.open);
    this.dashes.setLines(lines.dashes);
  }

  render(camera, reach) {
    const { toward, up } = camera.axes();
    const eye = this.renderer.getActiveCamera();
    eye.setFocalPoint(...camera.centre);
    eye.setPosition(...camera.centre.map((value, k) => value + 2 * reach * toward[k]));
    eye.setViewUp(...up);
    eye.setParallelScale(camera.halfHeight);
    eye.setClippingRange(reach / 100, 4 * reach);
    this.window.render();
  }
}

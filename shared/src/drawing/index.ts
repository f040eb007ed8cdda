/** Drawings in millimetres at full size, before any file format. Knows casework and geometry; no documents, no formats. */
export { bevelledFront } from './bevelled-front.js';
export { type CombWords, combDrawing } from './curvature-comb.js';
export {
    type Cut,
    type Drawing,
    type DrawnLine,
    type DrawnText,
    type LineRole,
    type LineStyle,
    lineStyles,
    type TextPlace,
    textLayer,
} from './drawing.js';
export { formDrawing } from './form-drawing.js';
export { type FormShape, formShapes } from './form-shape.js';
export { type DrawnRectangle, type LayoutPicture, layoutDrawing } from './layout-drawing.js';
export { type Offset, offsetsFrom } from './offsets.js';
export { extentOf, sideBySide } from './place-drawing.js';
export { type TemplateWords, templateDrawing } from './template-drawing.js';
export { type TemplateShape, templateShapes } from './template-shape.js';
export { wrapped } from './wrapped-text.js';

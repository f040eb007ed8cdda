/**
 * DXF of AutoCAD 2007 (AC1021, text in UTF-8): the units are said to be millimetres ($INSUNITS 4), each role of a line has its layer and
 * line type, runs are polylines whose arcs are bulges. Model space only, at full size. No dates: the same drawing gives the same text.
 */
import { Colors, DxfWriter, LWPolylineFlags, point3d, TextHorizontalAlignment, TextVerticalAlignment, Units } from '@tarikjabiri/dxf';
import { type Drawing, type DrawnLine, type DrawnText, type LineRole, lineStyles, textLayer } from '../drawing/index.js';

const colors: Readonly<Record<LineRole, number>> = {
    finished: Colors.Blue,
    core: Colors.White,
    joint: Colors.Green,
    centre: Colors.Red,
    dimension: Colors.Cyan,
    grain: Colors.Magenta,
    tearOut: Colors.Yellow,
    curve: Colors.White,
    comb: Colors.Cyan,
    envelope: Colors.Green,
};

/** A drawing as the text of a DXF file. */
export function writeDxf(drawing: Drawing): string {
    const writer = new DxfWriter();
    writer.setUnits(Units.Millimeters);
    for (const role of rolesOf(drawing)) addLayer(writer, role);
    writer.addLayer(textLayer, Colors.White, 'Continuous');
    for (const line of drawing.lines) addLine(writer, line);
    for (const text of drawing.texts) addText(writer, text);
    return writer.stringify();
}

/** Those that it has lines of, in the order of the table: a layer that nothing is on only asks what is missing. */
function rolesOf({ lines }: Drawing): readonly LineRole[] {
    const used = new Set(lines.map(({ role }) => role));
    return (Object.keys(lineStyles) as LineRole[]).filter((role) => used.has(role));
}

function addLayer(writer: DxfWriter, role: LineRole): void {
    const { layer, dashes } = lineStyles[role];
    // A dash is a positive length and a gap a negative one.
    if (dashes.length > 0)
        writer.addLType(
            layer,
            layer,
            dashes.map((length, index) => (index % 2 === 0 ? length : -length)),
        );
    writer.addLayer(layer, colors[role], dashes.length > 0 ? layer : 'Continuous');
}

function addLine(writer: DxfWriter, { role, runs, closed }: DrawnLine): void {
    const last = runs.at(-1);
    const vertices = runs.map(({ from, bulge }) => ({ point: from, bulge }));
    writer.addLWPolyline(closed || !last ? vertices : [...vertices, { point: last.to, bulge: 0 }], {
        layerName: lineStyles[role].layer,
        flags: closed ? LWPolylineFlags.Closed : LWPolylineFlags.None,
    });
}

const alignments = {
    start: TextHorizontalAlignment.Left,
    middle: TextHorizontalAlignment.Center,
    end: TextHorizontalAlignment.Right,
} as const;

function addText(writer: DxfWriter, { text, at, height, anchor, turned }: DrawnText): void {
    const place = point3d(at.x, at.y, 0);
    writer.addText(place, height, text, {
        layerName: textLayer,
        rotation: turned ? 90 : 0,
        ...(anchor === 'start'
            ? {}
            : {
                  secondAlignmentPoint: place,
                  horizontalAlignment: alignments[anchor],
                  verticalAlignment: TextVerticalAlignment.BaseLine,
              }),
    });
}

import { solidsOf } from 'casewright-shared/solids';
import { massOfPart } from 'casewright-shared/documents';
import { real } from 'casewright-shared/quantity';
import Module from 'manifold-3d/manifold.js';
import { test } from 'vitest';
import { allDesigns, analyseFile } from './analysed.js';

const joinery: any = { features: [], fasteners: [], contacts: new Map(), byPart: new Map(), unplaced: [] };
test('scratch', async () => {
    const kernel = await Module();
    kernel.setup();
    for (const design of await allDesigns()) {
        const { casework } = await analyseFile(design.path);
        const t = performance.now();
        const found = solidsOf(casework, joinery, kernel);
        const ms = performance.now() - t;
        console.log(design.name, 'parts', casework.parts.size, 'solids', found.parts.size, 'ms', Math.round(ms), 'coll', found.collisions.length, 'open', found.openJoints.length);
        for (const part of casework.parts.values()) {
            if (!found.parts.get(part.path)) console.log('   none', part.path);
            const m = massOfPart(casework, part);
            const w = found.weights.get(part.path)?.mass;
            if (m && w && Math.abs(w / real.toNumber(m.value) - 1) > 0.003) console.log('   mass', part.path, part.kind, real.toNumber(m.value).toFixed(4), w.toFixed(4), (w/real.toNumber(m.value)).toFixed(4), part.bent ?? '');
        }
        for (const c of found.collisions.slice(0, 12)) console.log('   coll', c.parts.join(' '), c.volume.toFixed(1), JSON.stringify(c.extent, (k, v) => typeof v === 'number' ? +v.toFixed(2) : v));
        for (const c of found.openJoints.slice(0, 8)) { const j = casework.joints[c.joint]!; console.log('   open', j.enters, j.receives, c.gap.toFixed(4)); }
    }
}, 100000);

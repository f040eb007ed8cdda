/** Findings made by hand, of an invented design. */
import type { FindingRecord } from 'casewright-shared/documents';
import type { FoundInText } from '../../src/findings/found.js';

const record: FindingRecord = {
    code: 'UNI-001',
    severity: 'error',
    message: '`40` has no unit: a length is needed here',
    hint: 'write `40in` or `40mm`',
    file: 'hall/bookcase.case',
    range: { start: { line: 9, column: 11 }, end: { line: 9, column: 13 } },
    part: null,
    found: 'a plain number',
    needed: 'a length',
    allowed: null,
    source: 'Measures and units',
};

/** An error with a fix. */
export const missingUnit: FoundInText = {
    record,
    line: '    width 40   height 36in   depth 11in',
    related: [],
    fix: { title: 'Write 40in', changes: [{ place: { file: record.file, ...record.range }, text: '40in' }] },
};

/** A warning on a part, with a related place in another file. */
export const thinBand: FoundInText = {
    record: {
        ...record,
        code: 'EDG-002',
        severity: 'warning',
        message: 'the band is thinner than the edge is wide',
        hint: null,
        file: 'hall/shop racks.case',
        range: { start: { line: 3, column: 1 }, end: { line: 3, column: 8 } },
        part: 'Bookcase.Low',
        found: null,
        needed: null,
    },
    line: 'edging Lipped { band 1/8in of Walnut }',
    related: [
        { place: { file: 'hall/bookcase.case', start: { line: 12, column: 5 }, end: { line: 12, column: 14 } }, message: 'used here' },
    ],
};

/** A note that is allowed, with the reason. */
export const allowed: FoundInText = {
    record: { ...record, code: 'JNT-002', severity: 'note', message: '`Low` touches `kick`', hint: null, allowed: 'rests on the kick' },
    line: '    shelf Low at 12in',
    related: [],
};

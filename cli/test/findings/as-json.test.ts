import { expect, it } from 'vitest';
import { findingsAsJson } from '../../src/findings/as-json.js';
import { allowed, missingUnit, thinBand } from './sample.js';

it('has the names that scripts rely on, in their order, and no others', () => {
    const report = JSON.parse(findingsAsJson([missingUnit, thinBand]));
    const names = ['code', 'severity', 'message', 'hint', 'file', 'range', 'part', 'found', 'needed', 'source'];
    expect(report.findings.map(Object.keys)).toEqual([names, names]);
    expect(Object.keys(report)).toEqual(['schemaVersion', 'findings', 'count']);
});

it('says null for what a finding does not say, and leaves out what is allowed', () => {
    const report = JSON.parse(findingsAsJson([thinBand, allowed]));
    expect(report.findings).toMatchObject([{ code: 'EDG-002', hint: null, found: null, part: 'Bookcase.Low' }]);
    expect(report.count).toEqual({ error: 0, warning: 1, note: 0, allowed: 1 });
});

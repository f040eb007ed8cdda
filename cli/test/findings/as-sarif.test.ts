/** Against the schema of SARIF 2.1.0 (OASIS Standard, 27 March 2020), as an npm package publishes it. */
import { createRequire } from 'node:module';
import { Ajv, type AnySchemaObject } from 'ajv';
import type { Log } from 'sarif';
import { describe, expect, it } from 'vitest';
import { findingsAsSarif } from '../../src/findings/as-sarif.js';
import { allowed, missingUnit, thinBand } from './sample.js';

const published: AnySchemaObject = createRequire(import.meta.url)('@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json');
// It names draft 4 of JSON Schema, which ajv does not know; of what differs from draft 7 it uses nothing but the word `id`.
const { $schema: _, id: __, ...schema } = published;
const isUri = (text: string) => URL.canParse(text);
const isReference = (text: string) => URL.canParse(text, 'file:///folder/') && !/[\s\\^`{|}<>"]/.test(text);
// One of its patterns has a bracket too many, which only expressions without the flag `u` take for itself.
const ajv = new Ajv({
    strict: false,
    allErrors: true,
    unicodeRegExp: false,
    formats: { uri: isUri, 'uri-reference': isReference, 'date-time': true },
});
const validate = ajv.compile(schema);

const report = (folder = '/shop'): Log => JSON.parse(findingsAsSarif([missingUnit, thinBand, allowed], '1.2.3', folder));

describe('a report in SARIF', () => {
    it('is valid by the schema of the standard', () => {
        validate(report());
        expect(validate.errors ?? []).toEqual([]);
    });

    it('would not be valid without a message, or with a location that is no URI', () => {
        const log = report();
        delete (log.runs[0]!.results![0] as { message?: unknown }).message;
        log.runs[0]!.results![1]!.locations![0]!.physicalLocation!.artifactLocation!.uri = 'shop racks.case';
        expect(validate(log)).toBe(false);
        expect(validate.errors?.map(({ keyword }) => keyword)).toEqual(expect.arrayContaining(['required', 'format']));
    });

    it('declares each rule once, with its name, level and help, and each result points at its own', () => {
        const [run] = report().runs;
        const rules = run!.tool.driver.rules!;
        expect(rules.map(({ id }) => id)).toEqual(['EDG-002', 'JNT-002', 'UNI-001']);
        expect(rules[2]).toMatchObject({ name: 'missing-unit', defaultConfiguration: { level: 'error' } });
        for (const { ruleId, ruleIndex } of run!.results!) expect(rules[ruleIndex!]!.id).toBe(ruleId);
    });

    it('says where the words are, with the end behind the last character (SARIF 2.1.0, 3.30.8) in UTF-16 units (3.14.17)', () => {
        const [run] = report().runs;
        expect(run!.columnKind).toBe('utf16CodeUnits');
        expect(run!.results![0]!.locations![0]!.physicalLocation).toEqual({
            artifactLocation: { uri: 'hall/bookcase.case' },
            region: { startLine: 9, startColumn: 11, endLine: 9, endColumn: 13 },
        });
        expect(run!.results![1]!.locations![0]).toMatchObject({
            physicalLocation: { artifactLocation: { uri: 'hall/shop%20racks.case' } },
            logicalLocations: [{ fullyQualifiedName: 'Bookcase.Low' }],
        });
    });

    it('suppresses what is allowed, with the reason (SARIF 2.1.0, 3.27.23)', () => {
        const results = report().runs[0]!.results!;
        expect(results.map(({ suppressions }) => suppressions)).toEqual([
            undefined,
            undefined,
            [{ kind: 'inSource', justification: 'rests on the kick' }],
        ]);
    });

    it('offers the change that mends it (SARIF 2.1.0, 3.55)', () => {
        const [fix] = report().runs[0]!.results![0]!.fixes!;
        expect(fix!.artifactChanges[0]!.replacements[0]).toEqual({
            deletedRegion: { startLine: 9, startColumn: 11, endLine: 9, endColumn: 13 },
            insertedContent: { text: '40in' },
        });
    });

    it('names a file by the same URI whatever folder it is run in', () => {
        expect(report('/')).toEqual(report('/somewhere/else'));
    });
});

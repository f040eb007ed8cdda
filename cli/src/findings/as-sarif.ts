/** Findings in the Static Analysis Results Interchange Format (SARIF) 2.1.0, an OASIS standard, for services that show them beside a change. */
import { type Rule, ruleNamed } from 'casewright-shared/rules';
import type { ArtifactLocation, Fix, Location, Log, PhysicalLocation, Region, ReportingDescriptor, Result } from 'sarif';
import { uriOf } from '../paths.js';
import type { FoundInText, Place } from './found.js';

const schema = 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json';

const levels: Readonly<Record<string, NonNullable<Result['level']>>> = { error: 'error', warning: 'warning', note: 'note' };

/** What one report is made with. */
interface Context {
    /** The absolute folder from which the files are named. */
    readonly workingFolder: string;
    readonly rules: readonly Rule[];
}

/** All findings. Those that are allowed are among them, as suppressed in the source, with the reason. */
export function findingsAsSarif(found: readonly FoundInText[], version: string, workingFolder: string): string {
    const codes = [...new Set(found.map(({ record }) => record.code))].sort();
    const rules = codes.map((code) => ruleNamed(code)).filter((rule) => rule !== undefined);
    const context = { workingFolder, rules };
    const log: Log = {
        $schema: schema,
        version: '2.1.0',
        runs: [
            {
                tool: { driver: { name: 'Casewright', semanticVersion: version, rules: rules.map(descriptorOf) } },
                columnKind: 'utf16CodeUnits',
                results: found.map((one) => resultOf(one, context)),
            },
        ],
    };
    return `${JSON.stringify(log, null, 2)}\n`;
}

function descriptorOf({ code, name, severity, title, what, why, mend, source }: Rule): ReportingDescriptor {
    return {
        id: code,
        name,
        shortDescription: { text: `${title}.` },
        fullDescription: { text: `${what} ${why}` },
        help: { text: `${mend}\n\nSource: ${source.citation}` },
        defaultConfiguration: { level: severity },
    };
}

function resultOf({ record, related, fix }: FoundInText, context: Context): Result {
    const { code, severity, message, hint, file, range, part, found, needed, allowed } = record;
    const ruleIndex = context.rules.findIndex((rule) => rule.code === code);
    const location: Location = {
        physicalLocation: physical({ file, ...range }, context),
        ...(part === null ? {} : { logicalLocations: [{ fullyQualifiedName: part, kind: 'object' }] }),
    };
    return {
        ruleId: code,
        ...(ruleIndex < 0 ? {} : { ruleIndex }),
        level: levels[severity] ?? 'none',
        message: { text: hint === null ? message : `${message}; ${hint}` },
        locations: [location],
        ...(related.length === 0 ? {} : { relatedLocations: related.map((one, index) => relatedLocation(one, index + 1, context)) }),
        ...(fix ? { fixes: [fixOf(fix, context)] } : {}),
        ...(allowed === null ? {} : { suppressions: [{ kind: 'inSource', justification: allowed }] }),
        properties: { found, needed },
    };
}

function relatedLocation({ place, message }: FoundInText['related'][number], id: number, context: Context): Location {
    return { id, physicalLocation: physical(place, context), message: { text: message } };
}

function fixOf({ title, changes }: NonNullable<FoundInText['fix']>, context: Context): Fix {
    const files = [...new Set(changes.map(({ place }) => place.file))];
    const artifactChanges = files.map((file) => ({
        artifactLocation: artifact(file, context),
        replacements: changes
            .filter(({ place }) => place.file === file)
            .map(({ place, text }) => ({ deletedRegion: regionOf(place), insertedContent: { text } })),
    }));
    return { description: { text: title }, artifactChanges };
}

function physical(place: Place, context: Context): PhysicalLocation {
    return { artifactLocation: artifact(place.file, context), region: regionOf(place) };
}

function regionOf({ start, end }: Place): Region {
    return { startLine: start.line, startColumn: start.column, endLine: end.line, endColumn: end.column };
}

/** A file by a URI relative to the working folder, or by its whole URI where it is not in there. */
function artifact(file: string, { workingFolder }: Context): ArtifactLocation {
    if (/^[a-z][a-z0-9+.-]+:/.test(file)) return { uri: file };
    const folder = uriOf(workingFolder, '.').replace(/\/?$/, '/');
    const uri = uriOf(workingFolder, file);
    return { uri: uri.startsWith(folder) ? uri.slice(folder.length) : uri };
}

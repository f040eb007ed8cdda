/** The page of a rule, as Markdown for the documentation and as plain text for a terminal, both from its one declaration. */
import { ruleNamed, rules } from '../registry.js';
import type { Example, Rule } from '../rule.js';
import { readMarks } from './example-marks.js';

/** What the tool says of a bad example, where that is known: the message and its hint. */
export interface Said {
    readonly message: string;
    readonly hint?: string;
}

const phaseWords = {
    reading: 'found while the text is read',
    sizes: 'found when the sizes of a file are computed',
    project: 'found over all that is built',
} as const;
const fixWords = {
    none: undefined,
    safe: 'The editor offers a change that mends it and changes nothing else.',
    unsafe: 'The editor offers a change; look at it before you take it.',
} as const;

/** The name of a rule's page, beside the index of all pages. */
export function rulePageName({ code }: Rule): string {
    return `${code}.md`;
}

/**
 * A rule's page in Markdown.
 * @param said what the tool says of each bad example, in their order.
 */
export function rulePage(rule: Rule, said: readonly (Said | undefined)[] = []): string {
    const { bad, good } = rule.examples;
    return page(
        `# ${rule.code}: ${rule.name}`,
        `**${rule.title}.** ${capital(rule.severity)}, ${phaseWords[rule.phase]}.`,
        rule.what,
        '## Why it matters',
        rule.why,
        '## What to do',
        [rule.mend, fixWords[rule.fix]].filter(Boolean).join(' '),
        '## Flagged',
        ...bad.flatMap((example, index) => flaggedExample(example, said[index])),
        '## Not flagged',
        ...good.flatMap(soundExample),
        '## Source',
        sourceLine(rule),
        allowLine(rule),
    );
}

function flaggedExample(example: Example, said: Said | undefined): string[] {
    const { text, flagged } = readMarks(example);
    const words = flagged ? text.slice(flagged.start, flagged.end) : '';
    const line = flagged ? text.slice(0, flagged.start).split('\n').length : 0;
    return [
        ...(example.note ? [example.note] : []),
        ...filesBeside(example),
        fenced(text),
        `Line ${line}, at \`${words}\`${said ? `: ${said.message}.${said.hint ? ` ${capital(said.hint)}${stopped(said.hint) ? '' : '.'}` : ''}` : '.'}`,
    ];
}

function soundExample(example: Example): string[] {
    return [...(example.note ? [example.note] : []), ...filesBeside(example), fenced(readMarks(example).text)];
}

function filesBeside({ beside = {} }: Example): string[] {
    const files = Object.entries(beside).flatMap(([name, text]) => [`\`${name}\`:`, fenced(text)]);
    return files.length > 0 ? [...files, '`design.case`:'] : [];
}

function fenced(text: string): string {
    return `\`\`\`case\n${text.trimEnd()}\n\`\`\``;
}

function sourceLine({ source: { kind, citation, value } }: Rule): string {
    const cited =
        kind === 'language' ? `A rule of the language: ${citation.charAt(0).toLowerCase()}${citation.slice(1)}` : capital(citation);
    return `${cited}${value ? `: ${value}` : ''}.`;
}

function allowLine({ severity, name, code }: Rule): string {
    if (severity === 'error') return 'An error cannot be allowed: it has to be mended.';
    const on = wholeCases.has(code.slice(0, code.indexOf('-')))
        ? 'on CASE because "..."`, in the braces of the case or at the top of the file'
        : 'on PART because "..."`, of a part, or of a case with all that is in it';
    return `To keep it as it is, say why: \`allow ${name} ${on}; without \`on\` it holds for the whole file. The reason is printed with the documents.`;
}

/** Groups whose findings are about a case as a whole. */
const wholeCases: ReadonlySet<string> = new Set(['STB', 'RCK', 'HND', 'ACC']);

/** What the codes of a group are about. */
const groups: Readonly<Record<string, string>> = {
    TXT: 'Text',
    NAM: 'Names',
    UNI: 'Units and numbers',
    PRP: 'Properties and steps',
    PLC: 'Places and sizes',
    MAT: 'Materials',
    EDG: 'Edges',
    CRV: 'Curves',
    JNT: 'Joints',
    STR: 'Strength',
    STB: 'How it stands',
    RCK: 'Racking',
    MOV: 'Movement of wood',
    HND: 'Carrying and the way in',
    ACC: 'Access',
    GLS: 'Glass',
    COS: 'What it costs',
    LOA: 'What the case holds',
    DES: 'Decisions',
    SOL: 'Parts as solids',
};

/** The index of all rules, grouped as their codes are, in Markdown. */
export function ruleIndex(): string {
    return page(
        '# Rules',
        'What the tool looks for. Each rule has a page that says what is flagged, why it matters, what to do, and where the rule comes from. `casewright explain CODE` shows the same page in a terminal. Warnings and notes can be allowed in one place, with a reason; errors cannot.',
        ...Object.entries(groups).flatMap(([group, title]) => [`## ${title}`, tableOf(rules.filter(({ code }) => code.startsWith(group)))]),
    );
}

function tableOf(of: readonly Rule[]): string {
    const rows = of.map((rule) => `| [${rule.code}](${rulePageName(rule)}) | ${rule.name} | ${rule.severity} | ${rule.title} |`);
    return ['| code | name | | what is flagged |', '|---|---|---|---|', ...rows].join('\n');
}

function page(...blocks: readonly string[]): string {
    return `${blocks.join('\n\n')}\n`;
}

/**
 * A rule's page as plain text, in lines of at most 80 characters but for code and words that are longer; undefined if no rule has that
 * code or name.
 */
export function explainRule(codeOrName: string): string | undefined {
    const rule = ruleNamed(codeOrName);
    if (!rule) return undefined;
    return page(
        `${rule.code} ${rule.name} (${rule.severity})`,
        wrapped(`${rule.title}.`),
        wrapped(rule.what),
        `Why it matters\n${wrapped(rule.why)}`,
        `What to do\n${wrapped(rule.mend)}`,
        ...rule.examples.bad.map((example) => `Flagged\n${shownExample(example)}`),
        ...rule.examples.good.map((example) => `Not flagged\n${shownExample(example)}`),
        `Source\n${wrapped(sourceLine(rule))}`,
        wrapped(allowLine(rule)),
    );
}

/** All rules, one a line. */
export function listRules(): string {
    const widest = Math.max(...rules.map(({ name }) => name.length));
    return rules
        .map(({ code, name, severity, title }) => `${code}  ${name.padEnd(widest)}  ${severity.padEnd('warning'.length)}  ${title}\n`)
        .join('');
}

const lineWidth = 80;

function wrapped(text: string): string {
    const lines: string[] = [];
    let line = '';
    for (const word of text.split(' ')) {
        const longer = line === '' ? word : `${line} ${word}`;
        if (longer.length > lineWidth && line !== '') {
            lines.push(line);
            line = word;
        } else {
            line = longer;
        }
    }
    return [...lines, line].join('\n');
}

/** The example set in, with `^` under the words that are flagged. */
function shownExample(example: Example): string {
    const { text, flagged } = readMarks(example);
    const shown: string[] = [];
    let start = 0;
    for (const line of text.trimEnd().split('\n')) {
        shown.push(setIn(line));
        const end = start + line.length;
        if (flagged && flagged.start >= start && flagged.start <= end) {
            shown.push(`    ${' '.repeat(flagged.start - start)}${'~'.repeat(Math.min(flagged.end, end) - flagged.start)}`);
        }
        start = end + 1;
    }
    const beside = Object.entries(example.beside ?? {}).flatMap(([name, file]) => [`${name}:`, ...file.trimEnd().split('\n').map(setIn)]);
    const files = beside.length > 0 ? [...beside, 'design.case:'] : [];
    return [...(example.note ? [wrapped(example.note)] : []), ...files, ...shown].join('\n');
}

function setIn(line: string): string {
    return `    ${line}`.trimEnd();
}

function capital(sentence: string): string {
    return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}

function stopped(sentence: string): boolean {
    return /[.?!]$/.test(sentence);
}

import MarkdownIt from 'markdown-it';
import { describe, expect, test } from 'vitest';
import { explainRule, listRules, readMarks, ruleIndex, rulePage, rulePageName, rules } from '../../src/rules/index.js';

describe('marks of an example', () => {
    test('are taken out, and say where the words are', () => {
        const { text, flagged } = readMarks({ text: 'shelf »Low« at 12in\n' });
        expect(text).toBe('shelf Low at 12in\n');
        expect(text.slice(flagged!.start, flagged!.end)).toBe('Low');
    });

    test('may be missing', () => {
        expect(readMarks({ text: 'shelf Low\n' })).toEqual({ text: 'shelf Low\n' });
    });
});

describe('explain', () => {
    test('shows a rule by its code or its name, with the words flagged', () => {
        const text = explainRule('end-grain-showing');
        expect(text).toBe(explainRule('EDG-003'));
        expect(text?.split('\n').slice(0, 3)).toEqual([
            'EDG-003 end-grain-showing (warning)',
            '',
            'The end of a band will show at the front.',
        ]);
        expect(text).toContain('            edge top Lipped\n            ~~~~~~~~~~~~~~~\n');
        expect(text).toContain('Source\nCommon practice, no source: the top edge is banded before the front edge.\n');
    });

    test('shows the files that stand beside an example', () => {
        expect(explainRule('NAM-005')).toContain('Flagged\nshop.case:\n    private material Ply : plywood');
        expect(explainRule('NAM-005')).toContain('\ndesign.case:\n    use "shop.case"\n');
    });

    test('knows no rule that does not exist', () => {
        expect(explainRule('EDG-999')).toBeUndefined();
    });

    test.each(rules.map(({ code }) => code))('%s keeps to the width of a terminal but for code', (code) => {
        const lines = explainRule(code)!.split('\n');
        expect(lines.filter((line) => line.length > 80 && !line.startsWith('    '))).toEqual([]);
    });

    test('lists all rules', () => {
        expect(listRules().trimEnd().split('\n')).toHaveLength(rules.length);
    });
});

describe('pages', () => {
    const markdown = new MarkdownIt();

    test.each(rules.map((rule) => [rule.code, rule] as const))(
        '%s reads as Markdown with its sections and its code in fences',
        (_, rule) => {
            const page = rulePage(rule);
            const tokens = markdown.parse(page, {});
            const headings = tokens.flatMap((token, index) => (token.type === 'heading_open' ? [tokens[index + 1]!.content] : []));
            expect(headings).toEqual([`${rule.code}: ${rule.name}`, 'Why it matters', 'What to do', 'Flagged', 'Not flagged', 'Source']);
            const fences = tokens.filter(({ type }) => type === 'fence').map(({ content }) => content);
            const { bad, good } = rule.examples;
            const besides = [...bad, ...good].flatMap(({ beside }) => Object.values(beside ?? {}));
            expect(fences.toSorted()).toEqual([...[...bad, ...good].map((example) => readMarks(example).text), ...besides].toSorted());
            expect(page).not.toMatch(/[»«]/);
        },
    );

    test('say what the tool says', () => {
        const [rule] = rules;
        expect(rulePage(rule!, [{ message: '`=` stands here', hint: 'take it out' }])).toContain(
            'Line 4, at `=`: `=` stands here. Take it out.',
        );
    });

    test('are all linked from the index', () => {
        const index = ruleIndex();
        for (const rule of rules) expect(index).toContain(`[${rule.code}](${rulePageName(rule)})`);
    });
});

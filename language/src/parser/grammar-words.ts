// Which words of the language may stand where. Knows the grammar as data: the lists are read from its rules.
import { AstUtils, GrammarAST } from 'langium';

/** The words of the grammar that its rule `Name` does not allow, sorted. */
export function reservedWords(grammar: GrammarAST.Grammar): string[] {
    const names = wordsOfRule(grammar, 'Name');
    const words = new Set<string>();
    for (const node of AstUtils.streamAllContents(grammar)) {
        if (GrammarAST.isKeyword(node) && /^\p{L}+$/u.test(node.value) && !names.has(node.value)) {
            words.add(node.value);
        }
    }
    return [...words].sort();
}

/** The words that a rule of the grammar and the rules that it calls allow. */
export function wordsOfRule(grammar: GrammarAST.Grammar, ruleName: string): Set<string> {
    return keywordsOf(grammar.rules.find((rule) => rule.name === ruleName));
}

/** The keywords of a rule and of the rules that it calls. */
function keywordsOf(rule: GrammarAST.AbstractRule | undefined, seen = new Set<GrammarAST.AbstractRule>()): Set<string> {
    const keywords = new Set<string>();
    if (rule === undefined || seen.has(rule)) {
        return keywords;
    }
    seen.add(rule);
    for (const node of AstUtils.streamAllContents(rule)) {
        if (GrammarAST.isKeyword(node)) {
            keywords.add(node.value);
        } else if (GrammarAST.isRuleCall(node)) {
            for (const keyword of keywordsOf(node.rule.ref, seen)) {
                keywords.add(keyword);
            }
        }
    }
    return keywords;
}

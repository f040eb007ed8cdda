// What a token or a pair of words means as a plain value. Knows terminals and the rules of two words: nothing of measures.
import { type CstNode, CstUtils, DefaultValueConverter, type GrammarAST, type ValueType } from 'langium';

/** Rules whose words belong together but stand apart in the text: `left of`, `each end`, `board foot`. */
const RULES_OF_SEVERAL_WORDS = new Set(['FaceRelation', 'MeasureWord', 'RateUnit']);

export class CasewrightWordValues extends DefaultValueConverter {
    protected override runConverter(rule: GrammarAST.AbstractRule, input: string, cstNode: CstNode): ValueType {
        if (rule.name === 'OPEN_STRING') {
            return input.slice(1);
        }
        if (RULES_OF_SEVERAL_WORDS.has(rule.name)) {
            const words = CstUtils.flattenCst(cstNode).filter((leaf) => !leaf.hidden);
            return words.map((leaf) => leaf.text).join(' ');
        }
        return super.runConverter(rule, input, cstNode);
    }
}

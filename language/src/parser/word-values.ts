// What a token or a pair of words means as a plain value. Knows terminals and the rules of two words: nothing of measures.
import { type CstNode, CstUtils, DefaultValueConverter, type GrammarAST, ValueConverter, type ValueType } from 'langium';

/** All values are texts: measures are read later, where their unit is asked for. */
export class CasewrightWordValues extends DefaultValueConverter {
    protected override runConverter(rule: GrammarAST.AbstractRule, input: string, cstNode: CstNode): ValueType {
        switch (rule.name) {
            case 'STRING':
                return ValueConverter.convertString(input);
            case 'OPEN_STRING':
                return input.slice(1);
            // Words that belong together but stand apart in the text: `left of`, `each end`, `board foot`.
            case 'FaceRelation':
            case 'MeasureWord':
            case 'RateUnit':
                return wordsOf(cstNode).join(' ');
            default:
                return input;
        }
    }
}

function wordsOf(cstNode: CstNode): string[] {
    return CstUtils.flattenCst(cstNode)
        .filter((leaf) => !leaf.hidden)
        .map((leaf) => leaf.text)
        .toArray();
}

// Decisions of the grammar that are prepared when a text first comes to them. Knows the interface of a lookahead strategy: no rule, no token.
import type { EmbeddedActionsParser, ILookaheadStrategy } from 'chevrotain';

type Rules = Parameters<NonNullable<ILookaheadStrategy['initialize']>>[0];
type Alternation = Parameters<ILookaheadStrategy['buildLookaheadForAlternation']>[0];
type Optional = Parameters<ILookaheadStrategy['buildLookaheadForOptional']>[0];
type ChooseAlternative = ReturnType<ILookaheadStrategy['buildLookaheadForAlternation']>;
type ChooseToGoOn = ReturnType<ILookaheadStrategy['buildLookaheadForOptional']>;

/**
 * Prepares each decision of a grammar when it is first met. Prepared all at once, they are most of what a start takes, and a text of
 * sixty lines meets few of them.
 */
export class LateLookahead implements ILookaheadStrategy {
    private rules: Rules | undefined;

    /** @param strategy how decisions are made */
    constructor(private readonly strategy: ILookaheadStrategy) {}

    validate(options: Parameters<ILookaheadStrategy['validate']>[0]): ReturnType<ILookaheadStrategy['validate']> {
        return this.strategy.validate(options);
    }

    initialize(rules: Rules): void {
        this.rules = rules;
    }

    buildLookaheadForAlternation(options: Alternation): ChooseAlternative {
        let choose: ChooseAlternative | undefined;
        const strategy = () => this.prepared();
        return function (this: EmbeddedActionsParser, alternatives) {
            choose ??= strategy().buildLookaheadForAlternation(options);
            return choose.call(this, alternatives);
        };
    }

    buildLookaheadForOptional(options: Optional): ChooseToGoOn {
        let choose: ChooseToGoOn | undefined;
        const strategy = () => this.prepared();
        return function (this: EmbeddedActionsParser) {
            choose ??= strategy().buildLookaheadForOptional(options);
            return choose.call(this);
        };
    }

    private prepared(): ILookaheadStrategy {
        if (this.rules) this.strategy.initialize?.(this.rules);
        this.rules = undefined;
        return this.strategy;
    }
}

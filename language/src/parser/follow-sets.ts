// Which tokens may follow a rule where another rule calls it. Knows the productions of the grammar: no rule by name, no text.
import {
    Alternation,
    type Alternative,
    type IProduction,
    NonTerminal,
    Option,
    type Repetition,
    RepetitionMandatory,
    RepetitionMandatoryWithSeparator,
    RepetitionWithSeparator,
    type Rule,
    Terminal,
} from 'chevrotain';

/** What a piece of a rule may begin with, and whether it may be nothing at all. */
interface Beginning {
    readonly tokens: ReadonlySet<string>;
    readonly optional: boolean;
}

const nothing: Beginning = { tokens: new Set(), optional: true };

/**
 * The sets by which recovery finds where to go on. The parser would make those of all rules at its start, most of what a start
 * takes there, and a text without a mistake needs none; here those of a rule are made when a mistake in it is first met.
 */
export class FollowSets {
    private readonly beginnings = new Map<Rule, Beginning>();
    private readonly followers = new Map<string, ReadonlyMap<string, ReadonlySet<string>>>();

    /** @param rules the rules of the grammar by name, as the parser has recorded them */
    constructor(private readonly rules: () => Readonly<Record<string, Rule>>) {}

    /**
     * @param rule the rule that is called
     * @param index which call of that rule it is in the rule that calls
     * @param caller the rule that calls
     * @returns the names of the tokens that may come next in the caller; empty where the call ends it
     */
    after(rule: string, index: number, caller: string): ReadonlySet<string> {
        let followers = this.followers.get(caller);
        if (!followers) {
            followers = this.followersIn(this.rules()[caller]);
            this.followers.set(caller, followers);
        }
        return followers.get(callKey(rule, index)) ?? nothing.tokens;
    }

    private followersIn(caller: Rule | undefined): ReadonlyMap<string, ReadonlySet<string>> {
        const found = new Map<string, ReadonlySet<string>>();
        const visitSequence = (parts: readonly IProduction[], after: Beginning): void => {
            let next = after;
            for (const part of [...parts].reverse()) {
                visit(part, next);
                next = oneThenOther(this.beginningOf(part), next);
            }
        };
        const visit = (part: IProduction, after: Beginning): void => {
            if (part instanceof NonTerminal) found.set(callKey(part.nonTerminalName, part.idx), after.tokens);
            else if (part instanceof Alternation) for (const way of part.definition) visitSequence(partsOf(way), after);
            else if (!(part instanceof Terminal)) visitSequence(partsOf(part), eitherOf(again(part, this), after));
        };
        if (caller) visitSequence(caller.definition, nothing);
        return found;
    }

    /** What one piece of a rule may begin with. */
    beginningOf(part: IProduction): Beginning {
        if (part instanceof Terminal) return { tokens: new Set([part.terminalType.name]), optional: false };
        if (part instanceof NonTerminal) return this.beginningOfRule(part.referencedRule);
        if (part instanceof Alternation) return part.definition.map((way) => this.beginningOfSequence(partsOf(way))).reduce(eitherOf);
        const { tokens, optional } = this.beginningOfSequence(partsOf(part));
        const required = part instanceof RepetitionMandatory || part instanceof RepetitionMandatoryWithSeparator;
        return { tokens, optional: optional || !required };
    }

    beginningOfSequence(parts: readonly IProduction[]): Beginning {
        let beginning = nothing;
        for (const part of parts) {
            // Not one part further than needed: a rule may call itself there.
            if (!beginning.optional) break;
            beginning = oneThenOther(beginning, this.beginningOf(part));
        }
        return beginning;
    }

    private beginningOfRule(rule: Rule): Beginning {
        const known = this.beginnings.get(rule);
        if (known) return known;
        const beginning = this.beginningOfSequence(rule.definition);
        this.beginnings.set(rule, beginning);
        return beginning;
    }
}

/** What begins the next round of a piece that may be repeated. */
function again(part: IProduction, sets: FollowSets): Beginning {
    if (part instanceof RepetitionWithSeparator || part instanceof RepetitionMandatoryWithSeparator) {
        return { tokens: new Set([part.separator.name]), optional: false };
    }
    return part instanceof Option ? { ...nothing, optional: false } : { ...sets.beginningOfSequence(partsOf(part)), optional: false };
}

type Sequence = Alternative | Option | Repetition | RepetitionMandatory | RepetitionWithSeparator | RepetitionMandatoryWithSeparator;

function partsOf(part: IProduction): readonly IProduction[] {
    return (part as Sequence).definition;
}

function oneThenOther(one: Beginning, other: Beginning): Beginning {
    return one.optional ? { tokens: new Set([...one.tokens, ...other.tokens]), optional: other.optional } : one;
}

function eitherOf(one: Beginning, other: Beginning): Beginning {
    return { tokens: new Set([...one.tokens, ...other.tokens]), optional: one.optional || other.optional };
}

function callKey(rule: string, index: number): string {
    return `${rule} ${index}`;
}

/** What a benchmark found, beside what it should reach. Nothing fails: a benchmark informs, tests decide. */

export interface Goal {
    readonly what: string;
    readonly found: number;
    readonly unit: string;
    /** At most, or at least, so much. */
    readonly atMost?: number;
    readonly atLeast?: number;
}

export class Report {
    private readonly goals: Goal[] = [];

    title(text: string): void {
        console.log(`\n${text}`);
    }

    note(text: string): void {
        console.log(`    ${text}`);
    }

    goal(goal: Goal): void {
        this.goals.push(goal);
        const limit = goal.atMost === undefined ? `at least ${say(goal.atLeast ?? 0)}` : `at most ${say(goal.atMost)}`;
        const mark = isReached(goal) ? 'reached' : 'MISSED ';
        console.log(`    ${mark}  ${goal.what}: ${say(goal.found)} ${goal.unit} (goal: ${limit})`);
    }

    close(): void {
        const missed = this.goals.filter((goal) => !isReached(goal)).length;
        console.log(`\n${this.goals.length - missed} of ${this.goals.length} goals reached`);
    }
}

function isReached({ found, atMost, atLeast }: Goal): boolean {
    return (atMost === undefined || found <= atMost) && (atLeast === undefined || found >= atLeast);
}

function say(value: number): string {
    if (value >= 100) return Math.round(value).toString();
    return Number(value.toPrecision(3)).toString();
}

/** Numbers that look random and are the same for the same seed, on every machine. */

/** A source of numbers by the method `xorshift32` of G. Marsaglia, "Xorshift RNGs", Journal of Statistical Software 8 (14), 2003. */
export class RandomNumbers {
    private state: number;

    /** @param seed any whole number */
    constructor(seed: number) {
        this.state = (seed | 0) ^ 0x9e3779b9 || 1;
    }

    /** A whole number from 0 to one less than `limit`. */
    below(limit: number): number {
        return Math.floor(this.fraction() * limit);
    }

    /** From 0 up to, but not including, 1. */
    fraction(): number {
        let state = this.state;
        state ^= state << 13;
        state ^= state >>> 17;
        state ^= state << 5;
        this.state = state;
        return (state >>> 0) / 4294967296;
    }
}

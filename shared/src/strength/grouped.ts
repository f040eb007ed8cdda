/** Things under the keys that they have, each list in the order in which they came. */
export function grouped<Key, One>(things: Iterable<One>, keysOf: (one: One) => readonly Key[]): ReadonlyMap<Key, readonly One[]> {
    const groups = new Map<Key, One[]>();
    for (const one of things) {
        for (const key of keysOf(one)) {
            const others = groups.get(key);
            if (others) others.push(one);
            else groups.set(key, [one]);
        }
    }
    return groups;
}

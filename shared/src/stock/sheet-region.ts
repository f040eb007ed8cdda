/**
 * A sheet while it is being laid out: regions that are cut from edge to edge into others. Measures hold the kerf: each region is
 * larger by one kerf than what is left of it, and so is the sheet, which makes the saw's share exact.
 */

const noBlank = -1;

/** A region of a sheet: it holds one blank, or is cut into regions side by side, or is free. */
export class SheetRegion {
    parent: SheetRegion | undefined;
    /** The regions it is cut into, at most one of them free. */
    parts: SheetRegion[] = [];
    /** Whether its parts lie side by side along the width. */
    alongWidth = false;
    blank = noBlank;
    turned = false;
    /** Where it stands in the list of free regions of its sheet. */
    private place = noBlank;

    constructor(
        public width: number,
        public height: number,
    ) {}

    get isFree(): boolean {
        return this.blank === noBlank && this.parts.length === 0;
    }

    /** How many times a piece is turned between cuts until it is this region. */
    get depth(): number {
        let depth = 0;
        for (let at = this.parent; at; at = at.parent) depth++;
        return depth;
    }

    get isListed(): boolean {
        return this.place !== noBlank;
    }

    /** Adds a free region to the list of those of its sheet. */
    enter(free: SheetRegion[]): void {
        this.place = free.length;
        free.push(this);
    }

    leave(free: SheetRegion[]): void {
        const last = free.pop();
        if (last && last !== this) {
            free[this.place] = last;
            last.place = this.place;
        }
        this.place = noBlank;
    }

    copyInto(free: SheetRegion[]): SheetRegion {
        const copy = new SheetRegion(this.width, this.height);
        copy.alongWidth = this.alongWidth;
        copy.blank = this.blank;
        copy.turned = this.turned;
        for (const part of this.parts) {
            const copied = part.copyInto(free);
            copied.parent = copy;
            copy.parts.push(copied);
        }
        if (copy.isFree) copy.enter(free);
        return copy;
    }
}

/** A sheet in work: its regions, and which of them are free. */
export class OpenSheet {
    root: SheetRegion;
    free: SheetRegion[] = [];

    /**
     * @param stock which of the stock sizes it is
     * @param width with one kerf added
     * @param height with one kerf added
     */
    constructor(
        readonly stock: number,
        readonly width: number,
        readonly height: number,
    ) {
        this.root = new SheetRegion(width, height);
        this.root.enter(this.free);
    }

    get isEmpty(): boolean {
        return this.root.isFree;
    }

    /** A copy of the regions, to come back to. */
    remember(): { readonly root: SheetRegion; readonly free: SheetRegion[] } {
        const free: SheetRegion[] = [];
        return { root: this.root.copyInto(free), free };
    }

    comeBackTo({ root, free }: ReturnType<OpenSheet['remember']>): void {
        this.root = root;
        this.free = free;
    }

    /**
     * Cuts a blank out of a free region, at its corner.
     * @param width of the blank as it lies there
     * @param stripOfWidth whether the first cut makes a strip as wide as the blank, and not one as high
     */
    place(region: SheetRegion, blank: number, width: number, height: number, turned: boolean, stripOfWidth: boolean): SheetRegion {
        const strip = this.cutOff(region, stripOfWidth ? width : height, stripOfWidth);
        const piece = this.cutOff(strip, stripOfWidth ? height : width, !stripOfWidth);
        if (piece.isListed) piece.leave(this.free);
        piece.blank = blank;
        piece.turned = turned;
        return piece;
    }

    /** Frees a region, with all that is in it; what lies free beside it becomes one with it. */
    clear(region: SheetRegion, taken: (blank: number) => void): void {
        this.empty(region, taken);
        let at = region;
        for (;;) {
            const { parent } = at;
            const neighbour: SheetRegion | undefined = parent?.parts.find((part) => part !== at && part.isFree);
            if (!parent || !neighbour) break;
            parent.parts.splice(parent.parts.indexOf(at), 1);
            if (parent.alongWidth) neighbour.width += at.width;
            else neighbour.height += at.height;
            if (parent.parts.length > 1) return;
            neighbour.leave(this.free);
            parent.parts = [];
            at = parent;
        }
        at.enter(this.free);
    }

    private empty(region: SheetRegion, taken: (blank: number) => void): void {
        if (region.blank !== noBlank) {
            taken(region.blank);
            region.blank = noBlank;
        } else if (region.isFree) {
            region.leave(this.free);
        }
        for (const part of region.parts) this.empty(part, taken);
        region.parts = [];
    }

    /** A strip of a free region; the region itself where nothing is left beside it. */
    private cutOff(region: SheetRegion, size: number, alongWidth: boolean): SheetRegion {
        const whole = alongWidth ? region.width : region.height;
        if (size >= whole) return region;
        const strip = alongWidth ? new SheetRegion(size, region.height) : new SheetRegion(region.width, size);
        const { parent } = region;
        if (parent && parent.alongWidth === alongWidth) {
            strip.parent = parent;
            parent.parts.splice(parent.parts.indexOf(region), 0, strip);
            if (alongWidth) region.width -= size;
            else region.height -= size;
            return strip;
        }
        const rest = alongWidth ? new SheetRegion(whole - size, region.height) : new SheetRegion(region.width, whole - size);
        if (region.isListed) region.leave(this.free);
        rest.enter(this.free);
        strip.parent = region;
        rest.parent = region;
        region.alongWidth = alongWidth;
        region.parts = [strip, rest];
        return strip;
    }
}

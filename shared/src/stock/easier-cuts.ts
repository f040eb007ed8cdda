/**
 * The same pieces with less work at the saw. Offcuts that lie in one line become one: what every piece of a strip would have trimmed off at the same side is cut off the strip
 * first. That is one cut in place of many, and a long offcut in place of crumbs.
 */
import { SheetRegion } from './sheet-region.js';

/** Joins the offcuts within a region. */
export function joinOffcuts(region: SheetRegion): void {
    for (const part of region.parts) joinOffcuts(part);
    let joined = 0;
    for (const part of region.parts) {
        const waste = commonWaste(part);
        if (waste > 0) takeOff(part, waste);
        joined += waste;
    }
    if (joined === 0) return;
    level(region, joined);
}

/** A part that is itself a row in the direction of its region is in that row; what is free there is one offcut, made longer by so much. */
function level(region: SheetRegion, longer: number): void {
    const parts = region.parts.flatMap((part) => (part.parts.length > 0 && part.alongWidth === region.alongWidth ? part.parts : [part]));
    const free = parts.filter(({ isFree }) => isFree).reduce((sum, part) => sum + (region.alongWidth ? part.width : part.height), longer);
    adopt(region, [...parts.filter(({ isFree }) => !isFree), ...(free > 0 ? [strip(region, free)] : [])]);
}

/**
 * Turns grids so that the fewest settings come first: where all pieces of a strip are divided alike, the strip is divided so first.
 * The region is changed.
 */
export function turnGrids(region: SheetRegion): void {
    for (const part of region.parts) turnGrids(part);
    if (region.parts.length > 0) level(region, 0);
    const filled = region.parts.filter(({ isFree }) => !isFree);
    const [first, ...others] = filled;
    if (!first || others.length === 0 || first.parts.length === 0) return;
    const rows = rowSizes(first);
    const areAlike = others.every((part) => {
        const sizes = rowSizes(part);
        return sizes.length === rows.length && sizes.every((size, index) => size === rows[index]);
    });
    const nestedRows = first.parts.filter(({ parts }) => parts.length > 0).length;
    if (!areAlike || (rows.length >= filled.length && nestedRows === 0)) return;
    const free = region.parts.find(({ isFree }) => isFree);
    const isAlongWidth = !region.alongWidth;
    const turned = rows.map((size, index) => {
        const row = isAlongWidth ? new SheetRegion(size, region.height) : new SheetRegion(region.width, size);
        row.alongWidth = region.alongWidth;
        const pieces = filled.map((part) => part.parts[index]!);
        if (pieces.every(({ isFree }) => isFree)) return row;
        adopt(row, pieces);
        level(row, free ? (row.alongWidth ? free.width : free.height) : 0);
        return row;
    });
    region.alongWidth = isAlongWidth;
    adopt(region, turned);
}

/** How far the parts of a region reach, in the direction in which they lie. */
function rowSizes({ parts, alongWidth }: SheetRegion): readonly number[] {
    return parts.map(({ width, height }) => (alongWidth ? width : height));
}

/** How much every part of a region has free at its far side, across the direction in which the parts lie. */
function commonWaste(region: SheetRegion): number {
    const filled = region.parts.filter(({ isFree }) => !isFree);
    if (filled.length === 0) return 0;
    return Math.min(
        ...filled.map((part) => {
            const free = part.parts.find(({ isFree }) => isFree);
            if (!free || part.parts.length === 0) return 0;
            return region.alongWidth ? free.height : free.width;
        }),
    );
}

/** Makes a region smaller by what its parts have free. */
function takeOff(region: SheetRegion, waste: number): void {
    const shrink = (one: SheetRegion) => {
        if (region.alongWidth) one.height -= waste;
        else one.width -= waste;
    };
    shrink(region);
    for (const part of region.parts) {
        shrink(part);
        const free = part.parts.find(({ isFree }) => isFree);
        if (!free) continue;
        shrink(free);
        if ((region.alongWidth ? free.height : free.width) > 0) continue;
        part.parts = part.parts.filter((one) => one !== free);
        const [only, ...others] = part.parts;
        if (only && others.length === 0) replace(part, only);
    }
}

/** A region with one part is that part. */
function replace(region: SheetRegion, by: SheetRegion): void {
    region.blank = by.blank;
    region.turned = by.turned;
    region.alongWidth = by.alongWidth;
    adopt(region, by.parts);
}

/** A free part of a region, so long in the direction in which its parts lie. */
function strip(region: SheetRegion, size: number): SheetRegion {
    return region.alongWidth ? new SheetRegion(size, region.height) : new SheetRegion(region.width, size);
}

function adopt(region: SheetRegion, parts: readonly SheetRegion[]): void {
    region.parts = [...parts];
    for (const part of parts) part.parent = region;
}

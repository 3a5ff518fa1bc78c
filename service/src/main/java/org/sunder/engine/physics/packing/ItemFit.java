package org.sunder.engine.physics.packing;

/**
 * Where one item comes to lie and whether it fits there. Stations are depths from the joint plane.
 *
 * @param name the item
 * @param from nearest station, m
 * @param to deepest station, m
 * @param clearance what the narrowest cavity radius there leaves beside a rigid item, m; negative where it is too wide. For
 *     a soft item the same by its packed diameter, and not decisive
 * @param fits whether it fits
 */
public record ItemFit(String name, double from, double to, double clearance, boolean fits) {}

// What a setup has in it, as the items that a load-out begins with.

/**
 * All but what is pushed in at the joint. Cloth and cord fill the bore; how long they are as packed no setup says, so that is
 * left to be typed.
 *
 * @param setup as the service answers it
 */
export function contentsOf(setup) {
  return setup.contents.filter((content) => content.kind !== 'intrusion').map((content) => ({
    name: content.name,
    place: 'joint',
    ...(content.kind === 'fabric'
      ? { kind: 'soft', diameter: setup.innerDiameter, volume: content.envelopeVolume, material: content.material, mass: content.mass }
      : { kind: 'hard', length: content.length, diameter: content.diameter, volume: content.volume }),
  }));
}

/** Stefan-Boltzmann constant, W/(m² K⁴) (CODATA 2018, exact by the SI). */
const stefanBoltzmann = 5.670374419e-8;

/** Heat, W/m², that a grey surface radiates to wide surroundings, both K; below zero where it is the colder. */
export function greyRadiation(emissivity: number, surface: number, surroundings: number): number {
  return emissivity * stefanBoltzmann * (surface ** 4 - surroundings ** 4);
}

/** Salts of a bath in kg for each kg of water; absent means none, `{}` is plain water. */
export interface Brine {
  readonly sodiumHydroxide?: number;
  readonly sodiumNitrate?: number;
  readonly sodiumNitrite?: number;
  readonly potassiumNitrate?: number;
}

export type Salt = keyof Brine;

export const salts: readonly Salt[] = ["sodiumHydroxide", "sodiumNitrate", "sodiumNitrite", "potassiumNitrate"];

import { plain } from "../physics/needNumber.ts";
import type { Brine } from "../physics/types.ts";
import { plainWater } from "./bathEnthalpy.ts";
import { ordinaryAir } from "./bathLosses.ts";
import { type BathModel, bathModel, tankSteel } from "./bathModel.ts";
import { type BathFlows, type BathStand, bathStep, energyOf, nothingDone, type StepDone, settle } from "./bathStep.ts";
import { Brim } from "./bathVolume.ts";
import { BoilWatch, few } from "./boilWatch.ts";
import { drySaltEnthalpy } from "./drySalt.ts";
import { emptyTally } from "./emptyTally.ts";
import { addedSalts, saltMass, scaledSalts } from "./saltMasses.ts";
import { saltOut } from "./saltOut.ts";
import type { Instant } from "./schedulePlan.ts";
import type {
  BathTally,
  CoursePoint,
  SimulatedBath,
  SimulationCharge,
  SimulationEvent,
  SimulationOptions,
  SimulationSetup,
} from "./simulationTypes.ts";
import { slugSteam } from "./slugSteam.ts";
import { thermometerFollows, thermometerShows } from "./thermometerShows.ts";

/** One bath on its way through a schedule: what changes, and how. */
export class BathRun {
  readonly events: SimulationEvent[] = [];
  readonly watch: BoilWatch;
  readonly stand: BathStand;
  readonly tally: BathTally;
  readonly flows: BathFlows = { fire: 0, feed: 0, feedHeat: 0, steel: 0, steelHeat: 0 };
  model: BathModel;
  salts: Brine;
  time = 0;
  stops: SimulatedBath["stops"];
  /** J that plain water would hold which came in, and which left as steam, at the bath's temperature. */
  waterAtBath = 0;
  steamAtBath = 0;
  /** J that the bath gained as salt dissolved in it at its temperature. */
  saltAtBath = 0;
  readonly #setup: SimulationSetup;
  readonly #charge: SimulationCharge;
  readonly #options: SimulationOptions;
  readonly #done: StepDone = nothingDone();
  readonly #brim: Brim;
  #mass: number;
  #out: (water: number, T: number) => number;
  #dissolved = true;
  #held: number;
  #boilOff = 0;

  constructor(setup: SimulationSetup, charge: SimulationCharge, options: SimulationOptions) {
    this.#setup = setup;
    this.#charge = charge;
    this.#options = options;
    this.salts = charge.salts;
    this.#mass = saltMass(charge.salts);
    this.model = bathModel(setup, this.salts, charge.departure, options);
    const { tank } = setup;
    const { water } = charge;
    if (!(water > this.model.least)) {
      throw new RangeError(
        `invalid water: ${plain(water)} kg; more than ${plain(this.model.least)} kg, with which the bath counts as dry`,
      );
    }
    const boils = this.model.boiling.at(water);
    const T = charge.temperature === "boiling" ? boils : charge.temperature;
    if (T > boils + 1e-6) {
      throw new RangeError(
        `invalid temperature: ${plain(T)} K; at most ${plain(boils)} K, where this bath boils, or "boiling"`,
      );
    }
    const steel = tankSteel(tank);
    const { heat } = this.model;
    const energy = energyOf(this.model, water, Math.min(T, boils), steel);
    this.stand = { water, T: Math.min(T, boils), steel, energy, byT: heat.byT, byWater: heat.byWater };
    this.#held = this.stand.T;
    this.#brim = new Brim(tank.length * tank.width * tank.depth);
    this.watch = new BoilWatch(T >= boils - 1e-6, this.events);
    this.#out = saltOut(this.salts);
    this.tally = emptyTally();
    this.#dissolved = this.#out(water, this.stand.T) === 0;
    if (!this.#dissolved) this.#say("not all the salt is dissolved");
    this.#lookAtBrim();
  }

  /** What the course keeps of this moment. */
  point(): CoursePoint {
    const { water, T } = this.stand;
    return {
      time: this.time,
      water,
      salts: this.salts,
      T,
      boilingPoint: this.model.boiling.at(water),
      shown: thermometerShows(this.#held, this.#setup.thermometer),
      state: this.stops?.state ?? this.#state(),
      boilOff: this.#boilOff,
      ...(this.#options.tally ? { tally: { ...this.tally } } : {}),
    };
  }

  #state(): CoursePoint["state"] {
    if (!this.#dissolved) return "salt coming out";
    return this.watch.boiling ? "boiling" : "warming";
  }

  #say(says: string): void {
    this.events.push({ time: this.time, says });
  }

  #remodel(salts: Brine): void {
    this.salts = salts;
    this.#mass = saltMass(salts);
    this.model = bathModel(this.#setup, salts, this.#charge.departure, this.#options);
    this.#out = saltOut(salts);
  }

  /** Does what happens at one instant; the burner is the caller's. */
  meet(instant: Instant): void {
    const { mixing = 0, partsWarming = 0 } = this.#options;
    if (instant.dragOut !== undefined) this.#takeOut(instant.dragOut);
    const short = this.model.boiling.at(this.stand.water) - this.stand.T;
    const before = this.stand.T;
    for (const { salts, temperature } of instant.salts) this.#saltIn(salts, temperature);
    let water = 0;
    let brings = 0;
    for (const slug of instant.slugs) {
      const steam = slugSteam(this.model, this.stand, slug.water, slug.temperature);
      this.watch.add({ time: this.time, water: slug.water, ...steam }, this.time + mixing);
      this.#say(`${few(slug.water)} kg of water goes in`);
      water += slug.water;
      brings += slug.water * plainWater(slug.temperature);
    }
    let parts = 0;
    let hold = 0;
    for (const { mass, temperature } of instant.parts) {
      this.#say(`${few(mass)} kg of parts go in`);
      parts += mass;
      hold += mass * this.model.steel.at(temperature);
    }
    const { stand, tally } = this;
    const wet = mixing === 0 && water > 0;
    const laden = partsWarming === 0 && parts > 0;
    if (wet) {
      stand.water += water;
      stand.energy += brings;
      tally.water += water;
      tally.waterEnthalpy += brings;
    }
    if (laden) {
      stand.steel += parts;
      stand.energy += hold;
      tally.parts += parts;
      tally.partsEnthalpy += hold;
    }
    if (!wet && !laden && instant.salts.length === 0) return;
    const done = this.#done;
    Object.assign(done, nothingDone());
    settle(this.model, stand, Math.max(0, short), done);
    this.waterAtBath += wet ? water * plainWater(stand.T) : 0;
    this.#tallySteam();
    if (laden && before - stand.T > 0.05) this.#say(`the parts cool the bath by ${few(before - stand.T)} K`);
    // A thermometer without a lag is there at once; one with a lag sees the drop in the steps to come.
    if (!this.#setup.thermometer?.lag) this.#held = stand.T;
    if (!done.boiled) this.watch.stop(this.time);
    else if (!this.watch.boiling) this.#say(`${few(done.flashed)} kg flash at once`);
    this.#look();
  }

  #takeOut(dragOut: number): void {
    const { stand, tally, model } = this;
    const mass = stand.water + this.#mass;
    if (dragOut > mass / 2) {
      throw new RangeError(`invalid drag-out: ${plain(dragOut)} kg; at most half of the bath's ${plain(mass)} kg`);
    }
    const share = dragOut / mass;
    const took = share * model.heat.at(stand.water, stand.T);
    const steel = tally.parts * model.steel.at(stand.T);
    tally.dragOut += dragOut;
    tally.dragOutWater += share * stand.water;
    tally.dragOutEnthalpy += took;
    tally.partsEnthalpy -= steel;
    stand.energy -= took + steel;
    stand.steel -= tally.parts;
    stand.water *= 1 - share;
    stand.byT *= 1 - share;
    this.#say(`${few(tally.parts)} kg of parts come out with ${few(dragOut)} kg of bath`);
    tally.parts = 0;
    if (share > 0) this.#remodel(scaledSalts(this.salts, 1 - share));
  }

  #saltIn(salts: Brine, temperature = this.#setup.air?.temperature ?? ordinaryAir.temperature): void {
    const { stand } = this;
    const before = this.model.heat.at(stand.water, stand.T);
    this.#remodel(addedSalts(this.salts, salts));
    this.saltAtBath += this.model.heat.at(stand.water, stand.T) - before;
    const brings = drySaltEnthalpy(salts, temperature);
    this.tally.saltEnthalpy += brings;
    stand.energy += brings;
    // Dry salt takes its time to dissolve: that some of it is not yet dissolved is no salt coming out.
    this.#dissolved = false;
    this.#say(`${few(saltMass(salts))} kg of salt goes in`);
  }

  /** One step to `time`; `dt` is its length, s. */
  advance(time: number, dt: number): void {
    const { stand, model, flows } = this;
    const done = this.#done;
    const { water, T, steel, energy, byT, byWater } = stand;
    let length = dt;
    bathStep(model, stand, flows, dt, done);
    const dry = stand.water <= model.least;
    if (dry) length = this.#untilDry({ water, T, steel, energy, byT, byWater }, dt);
    this.time = dry ? time - dt + length : time;
    const { tally } = this;
    tally.fire += length * flows.fire;
    tally.walls += done.walls;
    tally.top += done.top;
    tally.water += length * flows.feed;
    tally.waterEnthalpy += length * flows.feedHeat;
    tally.parts += length * flows.steel;
    tally.partsEnthalpy += length * flows.steelHeat;
    this.waterAtBath += done.feedAtBath;
    this.#tallySteam();
    this.#boilOff = (done.evaporated + done.flashed) / length;
    this.#held = thermometerFollows(this.#held, T, stand.T, length, this.#setup.thermometer?.lag ?? 0);
    if (done.boiled) this.watch.start(this.time - length * (1 - done.reached));
    else this.watch.stop(this.time - length);
    if (dry) this.#goDry();
    this.#look();
  }

  /** Shortens the step that dries the bath to where it does: regula falsi on its length. */
  #untilDry(before: BathStand, dt: number): number {
    const { model, stand } = this;
    let [low, lowOver, high, highOver] = [0, before.water - model.least, dt, stand.water - model.least];
    let length = dt;
    for (let i = 0; i < 60 && Math.abs(stand.water - model.least) > 1e-12 * before.water; i++) {
      length = i % 3 === 2 ? (low + high) / 2 : (low * highOver - high * lowOver) / (highOver - lowOver);
      Object.assign(stand, before);
      bathStep(model, stand, this.flows, length, this.#done);
      const over = stand.water - model.least;
      if (over > 0) [low, lowOver] = [length, over];
      else [high, highOver] = [length, over];
    }
    return length;
  }

  #tallySteam(): void {
    const { evaporated, flashed, steamEnthalpy, steamAtBath } = this.#done;
    this.tally.steam += evaporated + flashed;
    this.tally.steamEnthalpy += steamEnthalpy;
    this.steamAtBath += steamAtBath;
  }

  #goDry(): void {
    const { water, T } = this.stand;
    const why =
      this.#mass > 0
        ? `${few(water)} kg of water is left and the bath is at ${few(T)} K, where the boiling curve ends`
        : "the water is gone";
    this.#stop("dry", why);
  }

  #stop(state: "dry" | "overflowing" | "salt coming out", reason: string): void {
    this.stops ??= { state, time: this.time, reason };
    this.#say(reason);
  }

  #look(): void {
    const out = this.#out(this.stand.water, this.stand.T);
    if (out === 0 && !this.#dissolved) {
      this.#dissolved = true;
      this.#say("all the salt is dissolved");
    } else if (out > 0 && this.#dissolved) {
      this.#stop(
        "salt coming out",
        `salt comes out: the brine is over its published solubility at ${few(this.stand.T)} K`,
      );
    }
    this.#lookAtBrim();
  }

  #lookAtBrim(): void {
    const { water, T } = this.stand;
    if (this.stops || !this.#brim.over(this.salts, water + this.#mass, water, T, this.tally.parts)) return;
    const { length, width, depth } = this.#setup.tank;
    this.#stop("overflowing", `the bath is more than the ${few(1000 * length * width * depth)} L that the tank holds`);
  }
}

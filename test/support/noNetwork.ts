import { Socket } from "node:net";

/** What a unit test may not do: its outcome would depend on somebody else's machine. */
function refuse(): never {
  throw new Error("A unit test asked the network; it may not.");
}

Socket.prototype.connect = refuse;
globalThis.fetch = refuse;

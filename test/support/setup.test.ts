import { connect } from "node:net";
import { expect, test } from "vitest";

test("a unit test cannot reach the network", () => {
  expect(() => fetch("http://127.0.0.1/")).toThrow("A unit test asked the network");
  expect(() => connect(80, "127.0.0.1")).toThrow("A unit test asked the network");
});

test("a unit test runs in a zone with daylight saving that is not the server's", () => {
  expect(new Date(2026, 0, 1).getTimezoneOffset()).toBe(420);
  expect(new Date(2026, 6, 1).getTimezoneOffset()).toBe(360);
});

// What every generated call needs: a client that is typed by the contract, and the comparisons with what the contract promises.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import createClient from "openapi-fetch";
import type { components, paths } from "./contract.js";

type Members = Record<string, unknown>;
type Problem = components["schemas"]["Problem"];

export const client = createClient<paths>({ baseUrl: process.env.KILISHO });
export const asked: string[] = [];

const expected = JSON.parse(readFileSync("expected.json", "utf-8")) as Record<string, Members>;

/** The answer, once it is known to be one. */
export function given<Data>(operation: string, data: Data | undefined, error: Problem | undefined, response: Response): Data {
  assert.equal(response.status, 200, `${operation}: ${JSON.stringify(error)}`);
  assert.ok(data !== undefined, operation);
  asked.push(`${operation} ${response.headers.get("content-type")?.split(";")[0]}`);
  return data;
}

/** The answer as JSON: the types of an address that also gives texts name both. */
export function structured<Data>(answer: Data): Exclude<Data, string> {
  assert.equal(typeof answer, "object");
  return answer as Exclude<Data, string>;
}

/** A member has the value that the contract shows. One of which the contract gives no type does not compile. */
export function holds<Told>(operation: string, member: string, told: Told, ..._: unknown extends Told ? ["has no type"] : []): void {
  assert.deepEqual(told, expected[operation]?.[member], `${operation}.${member}`);
}

/** A collection has as many entries as the rulebook says. */
export function counts(operation: string, items: readonly unknown[], count: number): void {
  assert.equal(items.length, count, operation);
}

/** A text that is not empty. */
export function reads(operation: string, text: string): void {
  assert.ok(text.length > 100, operation);
}

/** The refusal of a request with a member that does not exist: a problem document that points at it. */
export function refuses(operation: string, error: Problem | undefined, response: Response): void {
  assert.equal(response.status, 422, operation);
  assert.equal(error?.type, "/problems/invalid-request", operation);
  assert.deepEqual(error.errors?.map((fault) => [fault.pointer, fault.code]), [["/no_such_member", "extra_forbidden"]], operation);
}

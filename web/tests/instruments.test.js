import assert from "node:assert/strict";
import { test } from "node:test";
import { commonInstrument } from "../state/instruments.js";

test("an instrument without a certificate takes the error limit of its standard and says so", () => {
  const micrometer = commonInstrument({ kind: "micrometer, up to 50 mm", limit: "0.004 mm", division: "0.01 mm", source: "DIN 863-1, error limits", known: "read" });
  assert.deepEqual(micrometer, { name: "micrometer, up to 50 mm", kind: "micrometer", uncertainty: "0.004 mm", resolution: "0.01 mm", coverage: 1.732, certificate: "none: DIN 863-1, error limits" });
  const wrench = commonInstrument({ kind: "torque wrench", limit: "4 %", division: "", source: "ISO 6789-1:2017", known: "memory" });
  assert.equal(wrench.gain, "4 %");
  assert.equal(wrench.certificate, "none: ISO 6789-1:2017; memory");
  assert.deepEqual(commonInstrument(undefined), { name: "", coverage: 2 });
});

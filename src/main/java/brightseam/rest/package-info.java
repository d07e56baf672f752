/**
 * Invariant: nothing is answered to anybody without a token, and nothing here decides what a service decides.
 *
 * <p>The interface for the shop's other systems under {@code /api/v1}: they read travellers, kits and records, and
 * release travellers. What each path takes and answers stands in {@code src/main/resources/rest/openapi.yaml}; requests
 * are checked against it, and a test checks paths and answers against it.
 */
package brightseam.rest;

package haftline.findings;

import haftline.handle.Choices;

/**
 * A change that was tried on the handle and mends a finding.
 *
 * @param choices the piece's choices with the change made
 * @param change what changes, as a sentence of the imperative with its numbers, without a full stop
 * @param outcome the finding's figure after the change
 */
public record Remedy(Choices choices, String change, double outcome) {}

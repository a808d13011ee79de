package haftline.findings;

import haftline.handle.Choices;
import java.util.Optional;

/**
 * A change that was tried on the handle and mends a finding.
 *
 * @param choices the piece's choices with the change made; empty where it is the parts that must
 *     change
 * @param change what changes, as a sentence of the imperative with its numbers, without a full stop
 * @param outcome the finding's figure after the change, or the value that was changed
 */
public record Remedy(Optional<Choices> choices, String change, double outcome) {}

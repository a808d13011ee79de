package haftline.cli;

import haftline.findings.Finding;
import java.util.Optional;

/**
 * A finding with its words.
 *
 * @param finding the finding
 * @param message what is wrong, a sentence with its figures
 * @param rule whose rule it is
 * @param remedy what mends it, a sentence whose numbers were tried; empty where nothing that was
 *     tried does
 */
record Told(Finding finding, String message, String rule, Optional<String> remedy) {}

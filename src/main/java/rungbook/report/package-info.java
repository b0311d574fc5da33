/**
 * Problems as people and programs read them: text for a terminal, JSON, and SARIF 2.1.0. Knows problems and their wording,
 * not what they are about.
 */
package rungbook.report;

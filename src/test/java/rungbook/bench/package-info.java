/**
 * Benchmarks. One command runs one: {@code mvn -q test-compile exec:exec -Dbench=CheckBench}. Measured figures stand in
 * docs/figures.md.
 */
package rungbook.bench;

/**
 * How long answers take. Compiled and run in the Maven profile {@code benchmark} only: {@code mvn
 * -q -Pbenchmark -pl analysis -am -DskipTests verify} prints the table.
 */
@NullMarked
package dryfloor.analysis.benchmark;

import org.jspecify.annotations.NullMarked;

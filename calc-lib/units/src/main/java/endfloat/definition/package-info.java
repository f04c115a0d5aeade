/**
 * How a calculation is declared: annotations on a static method of SI doubles, and the two ways a
 * calculation may refuse. Start with {@link endfloat.definition.Calculates}; the processor turns
 * each into a catalogue entry.
 */
package endfloat.definition;

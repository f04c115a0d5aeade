package endfloat.catalogue;

import java.util.List;

/**
 * A record of quantities of which a calculation takes a list.
 *
 * @param name its constructor in the working language
 * @param components in order
 */
public record Part(String name, List<Parameter> components) {}

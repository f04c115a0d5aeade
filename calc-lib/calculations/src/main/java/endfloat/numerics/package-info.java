/**
 * Numbers that several calculations need: the normal distribution, random numbers that are the same
 * on every machine, and thin doors to Commons Math. Start with {@link endfloat.numerics.Normal} or
 * {@link endfloat.numerics.RandomStream}.
 */
package endfloat.numerics;

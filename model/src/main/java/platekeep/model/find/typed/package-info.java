/**
 * What is meant by ages and times that are typed among other words: {@link platekeep.model.find.typed.AgeTyped} and
 * {@link platekeep.model.find.typed.TimeTyped}, each with the phrases that it understood and with what is left without
 * them. Nothing here knows plates.
 */
package platekeep.model.find.typed;

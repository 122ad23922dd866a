package tideover.engine.proof;

import tideover.engine.quantity.Series;

/**
 * Hours carried by the week of the year in which the outage begins, over all weather years and start hours. No walk goes
 * on past {@code capHours}, so a figure at the cap means that long or longer.
 *
 * @param worstHours    shortest of each of the 52 weeks
 * @param oneIn20Hours  one outage in twenty is carried no longer
 * @param medianHours   half are carried no longer
 */
public record TideLine(int askedHours, int capHours, Series worstHours, Series oneIn20Hours, Series medianHours) {}

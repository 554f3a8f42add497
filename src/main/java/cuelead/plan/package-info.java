/**
 * Lays the dance over the beats and decides what is called, when, how early, and what is left out:
 * {@link cuelead.plan.Timeline}, {@link cuelead.plan.CallPlan}, {@link cuelead.plan.Call}. It is handed the
 * words' lengths as {@link cuelead.plan.WordTimes}, so it knows no voice. May import {@code dance}, {@code time}
 * and {@code report}.
 */
package cuelead.plan;

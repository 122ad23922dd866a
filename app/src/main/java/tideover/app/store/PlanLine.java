package tideover.app.store;

/** A plan in the list of plans; {@code changed} is the local time of its last change, such as "2026-11-26 15:02:11". */
public record PlanLine(long id, String name, String changed, long revision) {}

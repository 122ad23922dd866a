package tideover.app.store;

public record PlanLine(long id, String name, String changed, long revision) {
    public String changedWords() {
        return changed;
    }
}

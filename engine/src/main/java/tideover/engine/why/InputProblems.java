package tideover.engine.why;

import java.util.List;

/** All that is wrong with an input, found in one reading and thrown once. */
public final class InputProblems extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final transient List<Problem> problems;

    public InputProblems(List<Problem> problems) {
        super(problems.size() + " problem(s), first: " + problems.get(0).sentence());
        this.problems = List.copyOf(problems);
    }

    public InputProblems(Problem problem) {
        this(List.of(problem));
    }

    public List<Problem> problems() {
        return problems;
    }
}

package tideover.app.report;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.Map;

/** The program's HTML templates, compiled with it. What a person typed is escaped by its place in the page. */
public final class Templates {
    private static final TemplateEngine COMPILED = TemplateEngine.createPrecompiled(
            null, ContentType.Html, Templates.class.getClassLoader(), "tideover.app.pages");

    private Templates() {}

    /** A template with its one parameter. */
    public static String render(String name, Object model) {
        StringOutput out = new StringOutput();
        COMPILED.render(name, model, out);
        return out.toString();
    }

    /** A template with several, by their names. */
    public static String render(String name, Map<String, Object> parameters) {
        StringOutput out = new StringOutput();
        COMPILED.render(name, parameters, out);
        return out.toString();
    }
}

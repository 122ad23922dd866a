package tideover.app.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.sqlite.SQLiteConfig;

/**
 * All plans, their files and the reader's choices in one SQLite file. One connection is held open, which writes and reads; for
 * several threads at once. Every change is one transaction that is on the disk before it returns.
 */
public final class Store implements AutoCloseable {
    /** Of all files of one plan together. */
    public static final long MOST_BYTES_TOGETHER = 64_000_000;

    /** "TIDE": tells our files from any other SQLite file. */
    static final int APPLICATION_ID = 0x54494445;

    /** Bytes of a page of the smallest kind (SQLite's file format, section 1.3). */
    private static final int SMALLEST_DATABASE = 512;

    private static final int NEWEST_VERSION = 1;
    /** Those that others refer to first. */
    private static final List<String> TABLES = List.of("plan", "plan_file", "earlier", "setting");

    private static final int KEPT_REVISIONS = 200;
    private static final int DAYS_KEPT = 30;
    private static final int MOST_FILES = 60;
    private static final String FILE_NAME = "[A-Za-z0-9_][A-Za-z0-9._-]{0,79}(/[A-Za-z0-9_][A-Za-z0-9._-]{0,79})?";
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss", Locale.ROOT);

    private final Path file;
    private final Clock clock;
    private final List<String> scripts;
    private final Handle handle;
    private final Guarded guarded;

    private Store(Path file, Clock clock, List<String> scripts, Handle handle, Guarded guarded) {
        this.file = file;
        this.clock = clock;
        this.scripts = scripts;
        this.handle = handle;
        this.guarded = guarded;
    }

    /** Opens the file, or makes it. Throws {@link StoreProblem} where it cannot be used; it is then left as it was. */
    public static Store open(Path file) {
        return open(file, Clock.systemDefaultZone());
    }

    static Store open(Path file, Clock clock) {
        return open(file, clock, scripts());
    }

    /** @param scripts by which a file is made and brought up, one for each version from 1 on */
    static Store open(Path file, Clock clock, List<String> scripts) {
        Path whole = file.toAbsolutePath();
        makeFolder(whole);
        Guarded guarded = Guarded.take(whole);
        try {
            refuseRuins(whole);
            Handle handle = Jdbi.create(() -> connect(whole)).open();
            try {
                Store store = new Store(whole, clock, scripts, handle, guarded);
                store.prepare();
                return store;
            } catch (RuntimeException e) {
                handle.close();
                throw e;
            }
        } catch (RuntimeException e) {
            guarded.close();
            throw Troubles.told(e, whole);
        }
    }

    /**
     * What the database itself would take for nothing and write over: a file of one byte, and an empty or missing file whose log is
     * there, which it throws away.
     */
    private static void refuseRuins(Path file) {
        Path log = file.resolveSibling(file.getFileName() + "-wal");
        try {
            long bytes = Files.exists(file) ? Files.size(file) : 0;
            if (bytes > 0 && bytes < SMALLEST_DATABASE) {
                throw Troubles.unreadable(file, null);
            }
            if (bytes == 0 && Files.exists(log) && Files.size(log) > 0) {
                throw new StoreProblem("The file " + file + " is gone or empty, but its log " + log
                        + " is there; nothing was changed. Put both back, or move the log away.");
            }
        } catch (IOException e) {
            throw new StoreProblem("The file " + file + " cannot be read: " + Troubles.reason(e) + ".", e);
        }
    }

    static void makeFolder(Path file) {
        Path folder = file.getParent();
        try {
            if (folder != null) {
                Files.createDirectories(folder);
            }
        } catch (IOException e) {
            throw new StoreProblem(
                    "The folder " + folder + " for your plans cannot be made: " + Troubles.reason(e) + ".", e);
        }
    }

    private static Connection connect(Path file) throws SQLException {
        SQLiteConfig config = new SQLiteConfig();
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.enforceForeignKeys(true);
        config.setBusyTimeout(3000);
        return config.createConnection("jdbc:sqlite:" + file);
    }

    /** Tells whose file it is, and then brings it up to the newest form; nothing is written to a file that is not ours. */
    private void prepare() {
        int version = pragma(handle, "user_version");
        int owner = pragma(handle, "application_id");
        boolean empty = pragma(handle, "schema_version") == 0;
        if (!empty && owner != APPLICATION_ID) {
            throw new StoreProblem("The file " + file + " is a database of some other program; it was left alone.");
        }
        if (version > scripts.size()) {
            throw Troubles.newer(file);
        }
        bringUp(version);
        // Only now: it is written into the file. A new one so has its owner in it from the first instant.
        String mode = handle.createQuery("pragma journal_mode = wal")
                .mapTo(String.class)
                .one();
        if (!mode.equals("wal")) {
            throw new StoreProblem("The disk of " + file
                    + " cannot keep plans safely; name a file on a disk of this machine with --store.");
        }
        String old = LocalDateTime.now(clock).minusDays(DAYS_KEPT).format(WHEN);
        change(in -> in.execute("delete from plan where deleted is not null and deleted < ?", old));
    }

    private void bringUp(int version) {
        if (version == scripts.size()) {
            return;
        }
        Path before = Copies.named(file, "-before-" + scripts.size());
        boolean kept = version > 0;
        if (kept) {
            before = Files.exists(before) ? Copies.free(before, "-") : before;
            Copies.write(handle, file, before, false, scripts.size());
        }
        try {
            change(in -> {
                for (String script : scripts.subList(version, scripts.size())) {
                    in.createScript(script).execute();
                }
                in.execute("pragma application_id = " + APPLICATION_ID);
                return in.execute("pragma user_version = " + scripts.size());
            });
        } catch (RuntimeException e) {
            if (kept) {
                forget(before);
            }
            throw e;
        }
    }

    /** The file is as it was, so its copy is of no use. */
    private static void forget(Path copy) {
        try {
            Files.deleteIfExists(copy);
        } catch (IOException e) {
            // Then it is there for nothing.
            return;
        }
    }

    static List<String> scripts() {
        return IntStream.rangeClosed(1, NEWEST_VERSION).mapToObj(Store::script).toList();
    }

    private static String script(int version) {
        try (InputStream in = Store.class.getResourceAsStream("/tideover/store/" + version + ".sql")) {
            if (in == null) {
                throw new IllegalStateException("no script for version " + version);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** For tests that look behind. */
    Handle handle() {
        return handle;
    }

    static int pragma(Handle handle, String name) {
        return handle.createQuery("pragma " + name).mapTo(Integer.class).one();
    }

    private String now() {
        return LocalDateTime.now(clock).format(WHEN);
    }

    // --- reading

    /** Newest first. */
    public List<PlanLine> plans() {
        return lines("deleted is null");
    }

    /** Deleted not long ago, and to be had back; newest first. */
    public List<PlanLine> deleted() {
        return lines("deleted is not null");
    }

    private List<PlanLine> lines(String which) {
        return read(in -> in.createQuery("select id, name, changed, revision from plan where " + which
                        + " order by changed desc, id desc")
                .map((row, context) -> new PlanLine(row.getLong(1), row.getString(2), row.getString(3), row.getLong(4)))
                .list());
    }

    /** A plan that is not deleted. */
    public Optional<StoredPlan> plan(long id) {
        return read(in -> {
            Map<String, byte[]> files = new LinkedHashMap<>();
            in.createQuery("select name, bytes from plan_file where plan = ? order by name")
                    .bind(0, id)
                    .map((row, context) -> Map.entry(row.getString(1), row.getBytes(2)))
                    .forEach(entry -> files.put(entry.getKey(), entry.getValue()));
            return in.createQuery("select text, revision, changed from plan where id = ? and deleted is null")
                    .bind(0, id)
                    .map((row, context) ->
                            new StoredPlan(id, row.getString(1), row.getLong(2), row.getString(3), files))
                    .findOne();
        });
    }

    public Optional<String> setting(String key) {
        return read(in -> in.createQuery("select value from setting where key = ?")
                .bind(0, key)
                .mapTo(String.class)
                .findOne());
    }

    private long one(String query, long id) {
        return handle.createQuery(query.replace("?", String.valueOf(id)))
                .mapTo(Long.class)
                .one();
    }

    // --- changing

    public long add(String name, String text, Map<String, byte[]> files) {
        checkFiles(files);
        return change(in -> {
            in.execute("insert into plan (name, text, revision, changed) values (?, ?, 1, ?)", name, text, now());
            long id = one("select last_insert_rowid()", 0);
            files.forEach((file, bytes) -> in.execute("insert into plan_file values (?, ?, ?)", id, file, bytes));
            return id;
        });
    }

    /**
     * Puts a new text in the place of a plan's text; the old one is kept for {@link #undo}.
     *
     * @param base the revision that the new text was made from
     * @return the new revision
     * @throws StaleEdit where the newest is another
     */
    public long replace(long id, long base, String name, String text) {
        return change(in -> {
            long newest = revision(in, id);
            if (newest != base) {
                throw new StaleEdit(base, newest);
            }
            remember(in, id);
            return step(in, id, name, text);
        });
    }

    private static long revision(Handle in, long id) {
        return in.createQuery("select revision from plan where id = ? and deleted is null")
                .bind(0, id)
                .mapTo(Long.class)
                .findOne()
                .orElseThrow(() -> new StoreProblem("There is no such plan; perhaps it was deleted meanwhile."));
    }

    private static void remember(Handle in, long id) {
        in.execute("insert into earlier select id, revision, name, text from plan where id = ?", id);
        in.execute(
                "delete from earlier where plan = ? and revision <= (select revision from plan where id = ?) - "
                        + KEPT_REVISIONS,
                id,
                id);
    }

    private long step(Handle in, long id, String name, String text) {
        in.execute(
                "update plan set name = ?, text = ?, revision = revision + 1, changed = ? where id = ?",
                name,
                text,
                now(),
                id);
        return revision(in, id);
    }

    /** Back to the text before the last change of the text; files stay as they are. False where there is none. */
    public boolean undo(long id) {
        return change(in -> {
            revision(in, id);
            record Text(long revision, String name, String text) {}
            Optional<Text> before = in.createQuery(
                            "select revision, name, text from earlier where plan = ? order by revision desc limit 1")
                    .bind(0, id)
                    .map((row, context) -> new Text(row.getLong(1), row.getString(2), row.getString(3)))
                    .findOne();
            before.ifPresent(text -> {
                in.execute("delete from earlier where plan = ? and revision = ?", id, text.revision());
                step(in, id, text.name(), text.text());
            });
            return before.isPresent();
        });
    }

    /** Keeps a file with a plan; counts as a change of it. */
    public void putFile(long id, String name, byte[] bytes) {
        checkFiles(Map.of(name, bytes));
        change(in -> {
            revision(in, id);
            in.execute("insert or replace into plan_file values (?, ?, ?)", id, name, bytes);
            long together = in.createQuery("select sum(length(bytes)) from plan_file where plan = ?")
                    .bind(0, id)
                    .mapTo(Long.class)
                    .one();
            if (together > MOST_BYTES_TOGETHER) {
                throw tooLarge();
            }
            if (one("select count(*) from plan_file where plan = ?", id) > MOST_FILES) {
                throw tooMany();
            }
            return in.execute("update plan set revision = revision + 1, changed = ? where id = ?", now(), id);
        });
    }

    public void removeFile(long id, String name) {
        change(in -> {
            revision(in, id);
            in.execute("delete from plan_file where plan = ? and name = ?", id, name);
            return in.execute("update plan set revision = revision + 1, changed = ? where id = ?", now(), id);
        });
    }

    private static void checkFiles(Map<String, byte[]> files) {
        if (files.size() > MOST_FILES) {
            throw tooMany();
        }
        if (files.values().stream().mapToLong(bytes -> bytes.length).sum() > MOST_BYTES_TOGETHER) {
            throw tooLarge();
        }
        if (!files.keySet().stream().allMatch(name -> name.matches(FILE_NAME))) {
            throw new StoreProblem(
                    "A file's name holds letters, digits, dots and dashes only, and at most one folder.");
        }
    }

    private static StoreProblem tooMany() {
        return new StoreProblem("A plan keeps at most " + MOST_FILES + " files.");
    }

    private static StoreProblem tooLarge() {
        return new StoreProblem(
                "The files of one plan hold at most " + MOST_BYTES_TOGETHER / 1_000_000 + " MB together.");
    }

    /** A plan with the same files under another name. */
    public synchronized long copy(long id, String name, String text) {
        Map<String, byte[]> files = plan(id).orElseThrow(
                        () -> new StoreProblem("There is no such plan; perhaps it was deleted meanwhile."))
                .files();
        return add(name, text, files);
    }

    /** It can be had back by {@link #restore} for 30 days. */
    public void delete(long id) {
        change(in -> in.execute("update plan set deleted = ? where id = ? and deleted is null", now(), id));
    }

    public void restore(long id) {
        change(in -> in.execute("update plan set deleted = null where id = ?", id));
    }

    public void set(String key, String value) {
        change(in -> in.execute("insert or replace into setting values (?, ?)", key, value));
    }

    // --- copies

    /**
     * Writes everything into a new file.
     *
     * @param over whether an older file of that name may be replaced
     */
    public synchronized void backup(Path to, boolean over) {
        Copies.write(handle, file, to, over, scripts.size());
    }

    /** The same for a file of plans that this process does not have open; another may go on working in it. */
    public static void backup(Path file, Path to, boolean over) {
        Copies.write(file, to, over, scripts().size());
    }

    /**
     * Puts a copy in the place of a file of plans that nobody has open, a damaged one too.
     *
     * @return where the file lies now that was there before; empty where none was
     */
    public static Optional<Path> putBack(Path copy, Path file) {
        return Copies.putBack(copy, file, scripts().size());
    }

    /**
     * Puts everything of a copy in the place of everything here, while this store is open, in one transaction.
     *
     * @return the file in which what was here before is kept
     */
    public synchronized Path takeOver(Path copy) {
        Copies.check(copy, scripts().size());
        Path kept = Copies.free(file, "-replaced-");
        backup(kept, false);
        try {
            handle.execute("attach ? as other", copy.toAbsolutePath().toString());
            try {
                change(in -> {
                    TABLES.forEach(table -> in.execute("delete from main." + table));
                    TABLES.forEach(table -> in.execute("insert into main." + table + " select * from other." + table));
                    return TABLES.size();
                });
            } finally {
                handle.execute("detach other");
            }
        } catch (JdbiException e) {
            throw Troubles.told(e, file);
        }
        return kept;
    }

    // --- one at a time, and in words

    private synchronized <T> T read(Function<Handle, T> reading) {
        try {
            return reading.apply(handle);
        } catch (JdbiException e) {
            throw Troubles.told(e, file);
        }
    }

    /**
     * One transaction, by its own words and not by the driver's switch for them: where another program holds the file the driver
     * would go on believing in a transaction that never began.
     */
    private synchronized <T> T change(Function<Handle, T> changing) {
        boolean begun = false;
        try {
            handle.execute("begin immediate");
            begun = true;
            T done = changing.apply(handle);
            handle.execute("commit");
            begun = false;
            return done;
        } catch (JdbiException e) {
            throw Troubles.told(e, file);
        } finally {
            if (begun) {
                takeBack();
            }
        }
    }

    private void takeBack() {
        try {
            handle.execute("rollback");
        } catch (JdbiException e) {
            // On a full disk the database has taken it back itself.
            return;
        }
    }

    @Override
    public synchronized void close() {
        handle.close();
        guarded.close();
    }
}

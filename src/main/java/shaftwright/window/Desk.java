package shaftwright.window;

import java.awt.Desktop;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.Action;
import shaftwright.jobs.BookVariants;
import shaftwright.jobs.CardsJob;
import shaftwright.jobs.CheckJob;
import shaftwright.jobs.CompareJob;
import shaftwright.jobs.FillJob;
import shaftwright.jobs.Filled;
import shaftwright.jobs.JobRefusedException;
import shaftwright.jobs.LeversJob;
import shaftwright.jobs.NewJob;
import shaftwright.jobs.OpenedWorkbook;
import shaftwright.jobs.RenewJob;
import shaftwright.jobs.Results;
import shaftwright.jobs.SheetsJob;
import shaftwright.jobs.TakeJob;
import shaftwright.jobs.TakenFile;
import shaftwright.jobs.UndoJob;
import shaftwright.units.LengthUnit;
import shaftwright.xlsx.Backup;
import shaftwright.xlsx.WatchedFile;
import shaftwright.xlsx.XlsxBook;

/** The workbooks that are open in the window, and what is done with them, one job at a time. */
final class Desk implements Work.Listener {
    /** What a job that writes leaves. */
    private record Saved(List<BookVariants> books, Optional<Backup> backup) {}

    private final MainWindow window;
    private final Questions questions;
    private final Watch watch = new Watch(this::seen);
    private final List<Action> forOne = new ArrayList<>();
    private final List<Action> forSeveral = new ArrayList<>();
    private final List<Action> always = new ArrayList<>();
    private final Action undo =
            Actions.of("Undo", 'u', "Puts the file from before the last fill back", this::undo);
    private final Action fill =
            Actions.of("Fill", 'f', "Computes everything and writes it in", this::fill);

    private List<LookedAt> open = List.of();
    private Optional<Backup> backup = Optional.empty();
    private Optional<Work<?>> work = Optional.empty();
    private boolean savedElsewhere;

    Desk(MainWindow window) {
        this.window = window;
        questions = new Questions(window.frame());
        always.add(Actions.of("Choose…", 'h', "Opens workbooks", this::choose));
        always.add(Actions.of("New…", 'n', "Makes a new workbook", this::make));
        forOne.add(fill);
        forOne.add(Actions.of("Check", 'c', "Says all that is wrong or doubtful", this::check));
        forOne.add(
                Actions.of(
                        "Open", 'o', "Opens it in your spreadsheet program", this::openElsewhere));
        forOne.add(Actions.of("Levers", 'l', "Says what would give more room", this::levers));
        forOne.add(Actions.of("Sheets…", 's', "Shows and hides sheets", this::sheets));
        forOne.add(
                Actions.of(
                        "Cards to PDF…", 'd', "Prints the shop cards by LibreOffice", this::cards));
        forOne.add(
                Actions.of(
                        "Renew", 'r', "Makes a current workbook of an earlier one", this::renew));
        forOne.add(
                Actions.of(
                        "Add another…", 'a', "Opens others beside this one", this::chooseBeside));
        forSeveral.add(
                Actions.of("Compare…", 'm', "Lays them side by side in a new one", this::compare));
        forSeveral.add(
                Actions.of("Take…", 't', "Takes a variant from one into another", this::take));
    }

    /** All that can be done, in the order of the buttons. */
    List<Action> actions() {
        List<Action> all = new ArrayList<>(always);
        all.add(fill);
        all.add(undo);
        forOne.stream().filter(action -> action != fill).forEach(all::add);
        all.addAll(forSeveral);
        return all;
    }

    void enable() {
        boolean idle = work.isEmpty();
        always.forEach(action -> action.setEnabled(idle));
        forOne.forEach(action -> action.setEnabled(idle && open.size() == 1));
        forSeveral.forEach(action -> action.setEnabled(idle && open.size() > 1));
        undo.setEnabled(idle && open.size() == 1 && backup.isPresent());
    }

    /** Whether nothing is being done. */
    boolean isIdle() {
        return work.isEmpty();
    }

    void close() {
        stop();
        watch.close();
    }

    // What is open

    /** Opens files in place of what is open. */
    void open(List<Path> files) {
        start(
                journal -> LookedAt.all(List.copyOf(new LinkedHashSet<>(files)), journal),
                this::opened);
    }

    private void opened(List<LookedAt> looked) {
        if (!looked.isEmpty()) {
            backup = Optional.empty();
            show(looked);
        }
        enable();
    }

    /** Shows files in place of what is open, beside what was seen of the same files before. */
    private void show(List<LookedAt> looked) {
        Set<Path> files = new LinkedHashSet<>(looked.stream().map(LookedAt::file).toList());
        List<LookedAt> before = open.stream().filter(each -> files.contains(each.file())).toList();
        boolean several = looked.size() > 1;
        open = looked;
        window.showFiles(List.copyOf(files));
        window.showResults(LookedAt.named(looked, several), LookedAt.named(before, several));
        follow();
    }

    private void follow() {
        savedElsewhere = false;
        window.banner().clear();
        if (open.size() == 1) {
            watch.follow(file());
        } else {
            watch.rest();
        }
    }

    private Path file() {
        return open.get(0).file();
    }

    private void seen(Path file, WatchedFile.Look look, boolean openElsewhere) {
        if (open.size() != 1 || !file.equals(file()) || !isIdle()) {
            return;
        }
        String name = file.getFileName().toString();
        if (look == WatchedFile.Look.GONE) {
            savedElsewhere = false;
            window.banner()
                    .tell(
                            name
                                    + " is not there any more. Was it renamed? Then drop it here again.");
            return;
        }
        savedElsewhere |= look == WatchedFile.Look.SAVED;
        if (savedElsewhere && openElsewhere) {
            window.banner()
                    .tell(
                            name
                                    + " was saved and is still open in a spreadsheet program. Close"
                                    + " it there, then fill it here.");
        } else if (savedElsewhere) {
            window.banner().offer(name + " was saved by another program. Fill it now?", fill);
        } else if (openElsewhere) {
            window.banner()
                    .tell(
                            name
                                    + " is open in a spreadsheet program. Save and close it there"
                                    + " before you fill it here.");
        } else if (look == WatchedFile.Look.SAME && Files.exists(file)) {
            window.banner().clear();
        }
    }

    // Jobs

    private <T> void start(Job<T> job, Consumer<T> then) {
        if (!isIdle()) {
            window.addMessage("Still at work: wait for its end, or stop it.");
            return;
        }
        window.clearMessages();
        Work<T> begun = new Work<>(job, this, then);
        work = Optional.of(begun);
        enable();
        begun.execute();
    }

    void stop() {
        work.ifPresent(Work::stop);
    }

    @Override
    public void step(String doing) {
        window.status().step(doing);
    }

    @Override
    public void line(String line) {
        window.addMessage(line);
    }

    @Override
    public void ended() {
        work = Optional.empty();
        window.status().end();
        enable();
    }

    /** Does what changes the open workbook, and shows what came of it. */
    private void startSaving(Job<Optional<Filled>> job) {
        Path file = file();
        start(
                journal -> {
                    Optional<Filled> filled = job.run(journal);
                    return filled.map(
                            done ->
                                    new Saved(
                                            done.books(),
                                            Backup.of(file, done.saved().replaced())));
                },
                (Optional<Saved> saved) -> saved.ifPresent(done -> saved(file, done)));
    }

    private void saved(Path file, Saved saved) {
        backup = saved.backup().or(() -> backup);
        show(List.of(new LookedAt(file, saved.books())));
        enable();
    }

    void fill() {
        Path file = file();
        startSaving(journal -> FillJob.inPlace(file).run(journal));
    }

    void check() {
        Path file = file();
        start(journal -> new CheckJob(file).run(journal), ok -> enable());
    }

    void undo() {
        Path file = file();
        Backup kept = backup.orElseThrow();
        start(
                journal -> {
                    Backup undone = new UndoJob(file, kept).run(journal);
                    return new Reopened(undone, LookedAt.all(List.of(file), journal));
                },
                reopened -> {
                    opened(reopened.looked());
                    backup = Optional.of(reopened.backup());
                    enable();
                });
    }

    /** What an undo leaves. */
    private record Reopened(Backup backup, List<LookedAt> looked) {}

    void renew() {
        Path file = file();
        startSaving(journal -> new RenewJob(file, file, Desk::refuseToReplace).run(journal));
    }

    private static void refuseToReplace(Path target) {
        if (Files.exists(target)) {
            throw new JobRefusedException(target.getFileName() + ": exists already");
        }
    }

    void levers() {
        Path file = file();
        start(
                journal -> {
                    Results.of(file, OpenedWorkbook.of(file, journal), journal)
                            .ifPresent(sizing -> LeversJob.ofAll(sizing).run(journal));
                    return file;
                },
                any -> enable());
    }

    void cards() {
        Path file = file();
        questions.pdf(file).ifPresent(target -> cards(target));
    }

    void cards(Path target) {
        Path file = file();
        start(
                journal -> {
                    new CardsJob(file, target).run(journal);
                    return target;
                },
                any -> enable());
    }

    void sheets() {
        Path file = file();
        start(
                journal -> {
                    journal.step("Reading " + file.getFileName());
                    return XlsxBook.open(file).seenSheets();
                },
                seen -> questions.sheets(seen).ifPresent(wanted -> sheets(seen, wanted)));
    }

    /** Shows those that were hidden and are wanted, hides those that were seen and are not. */
    void sheets(Map<String, Boolean> seen, Set<String> wanted) {
        Path file = file();
        List<String> show = wanted.stream().filter(name -> !seen.getOrDefault(name, true)).toList();
        List<String> hide =
                seen.keySet().stream()
                        .filter(name -> seen.get(name) && !wanted.contains(name))
                        .toList();
        List<BookVariants> books = open.get(0).books();
        start(
                journal -> {
                    SheetsJob job = new SheetsJob(file, file, show, hide);
                    return new Saved(books, Backup.of(file, job.run(XlsxBook.open(file), journal)));
                },
                saved -> saved(file, saved));
    }

    void openElsewhere() {
        Path file = file();
        start(
                journal -> {
                    journal.step("Opening " + file.getFileName());
                    if (!Desktop.isDesktopSupported()
                            || !Desktop.getDesktop().isSupported(Desktop.Action.OPEN)) {
                        throw new JobRefusedException(
                                "this system does not say which program opens workbooks; open "
                                        + file
                                        + " from there");
                    }
                    Desktop.getDesktop().open(file.toFile());
                    return file;
                },
                any -> enable());
    }

    // What asks first

    void choose() {
        List<Path> chosen = questions.workbooks();
        if (!chosen.isEmpty()) {
            open(chosen);
        }
    }

    void chooseBeside() {
        beside(questions.workbooks());
    }

    /** Opens files beside what is open. */
    void beside(List<Path> files) {
        if (!files.isEmpty()) {
            List<Path> all = new ArrayList<>(open.stream().map(LookedAt::file).toList());
            all.addAll(files);
            open(all);
        }
    }

    void make() {
        questions.made().ifPresent(wanted -> make(wanted.file(), wanted.unit()));
    }

    void make(Path file, LengthUnit unit) {
        start(
                journal -> NewJob.blank(file, unit).run(journal),
                filled -> filled.ifPresent(done -> made(file, done)));
    }

    private void made(Path file, Filled filled) {
        backup = Optional.empty();
        saved(file, new Saved(filled.books(), Optional.empty()));
    }

    void compare() {
        questions.comparison(file()).ifPresent(this::compare);
    }

    void compare(Path target) {
        List<Path> files = open.stream().map(LookedAt::file).toList();
        start(
                journal ->
                        new CompareJob(files, target, Optional.empty(), false, file -> {})
                                .run(journal),
                filled -> filled.ifPresent(done -> made(target, done)));
    }

    void take() {
        questions.taking(open).ifPresent(this::preview);
    }

    /** Thinks a taking out, and does it once the builder has seen what it brings. */
    void preview(TakeJob job) {
        start(
                journal -> {
                    Optional<TakenFile> taken = job.run(journal);
                    taken.ifPresent(prepared -> prepared.preview(journal));
                    return taken;
                },
                taken ->
                        taken.filter(prepared -> questions.agreed(window.messages(), prepared))
                                .ifPresent(this::take));
    }

    void take(TakenFile taken) {
        Path file = taken.taken().job().into();
        start(
                journal -> {
                    Filled filled = taken.save(file, journal);
                    return new Saved(filled.books(), Backup.of(file, filled.saved().replaced()));
                },
                saved -> saved(file, saved));
    }
}

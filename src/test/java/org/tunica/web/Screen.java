package org.tunica.web;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Assumptions;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;

/**
 * A real browser without a window. Where none is installed its tests are passed over and say so, unless the environment
 * names it as required.
 */
final class Screen implements AutoCloseable {
    private static final String REQUIRED = "TUNICA_BROWSER_REQUIRED";
    private static final List<String> FLAGS = List.of(
            "--headless=new",
            "--no-sandbox",
            "--disable-gpu",
            "--disable-dev-shm-usage",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
            "--window-size=1200,1600");

    private static final int MOST_GLANCES = 20_000;

    private final URI server;
    final ChromeDriver driver;

    private Screen(URI server, ChromeDriver driver) {
        this.server = server;
        this.driver = driver;
    }

    static Screen at(URI server) {
        Optional<Path> browser = installed("chromium", "chromium-browser", "google-chrome");
        Optional<Path> hand = installed("chromedriver");
        if (browser.isEmpty() || hand.isEmpty()) {
            String says = "no browser here: install chromium and chromium-driver to run the tests of the pages";
            if (System.getenv(REQUIRED) != null) {
                throw new AssertionError(says);
            }
            Assumptions.abort(says);
        }
        ChromeOptions options = new ChromeOptions();
        options.setBinary(browser.orElseThrow().toFile());
        options.addArguments(FLAGS);
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(hand.orElseThrow().toFile())
                .usingAnyFreePort()
                .build();
        return new Screen(server, new ChromeDriver(service, options));
    }

    private static Optional<Path> installed(String... names) {
        return Stream.of(System.getenv("PATH").split(":"))
                .flatMap(folder -> Stream.of(names).map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst();
    }

    void open(String path) {
        driver.get(server.resolve(path).toString());
    }

    /** Signs in with the keyboard alone, and waits for the answer: a page opened before it would break the sign-in off. */
    void signIn(String name, String password) {
        open("/sign-in");
        leaves(() -> driver.findElement(By.name("name")).sendKeys(name, Keys.TAB, password, Keys.ENTER));
    }

    String text() {
        return driver.findElement(By.tagName("body")).getText();
    }

    /** Opens all that is folded and lays out all that is far below, so that nothing on the page is left unlooked at. */
    void unfold() {
        driver.executeScript(
                "document.querySelectorAll('details').forEach(fold => { fold.open = true; });"
                        + "document.querySelectorAll('section').forEach(part => { part.style.contentVisibility = 'visible'; });");
    }

    /** Sends the form of the page whose action ends so with nothing in it, past what the browser would hold back. */
    void sendEmpty(String endOfAction) {
        leaves(() -> driver.executeScript(
                "const form = [...document.querySelectorAll('main form')]"
                        + ".find(one => one.getAttribute('action').endsWith(arguments[0]));"
                        + "for (const field of form.elements) {"
                        + "  if (field.type === 'radio' || field.type === 'checkbox') { field.checked = false; }"
                        + "  else if (field.type !== 'hidden' && field.tagName !== 'BUTTON') { field.value = ''; }"
                        + "}"
                        + "form.submit();",
                endOfAction));
    }

    /** Does what leads to another page, and comes back when the page it was done on is gone. */
    void leaves(Runnable act) {
        WebElement page = driver.findElement(By.tagName("html"));
        act.run();
        for (int looks = 0; looks < MOST_GLANCES && isThere(page); looks++) {}
    }

    private static boolean isThere(WebElement page) {
        try {
            return page.isEnabled();
        } catch (WebDriverException e) {
            return false;
        }
    }

    /** What breaks a rule of accessibility gravely, by the rules of WCAG 2 at levels A and AA. */
    List<String> hindrances() throws IOException {
        return broken("['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa']");
    }

    /** What is too faint on its ground; on another ground nothing else of a page changes. */
    List<String> faintInks() throws IOException {
        return broken("{type: 'rule', values: ['color-contrast']}");
    }

    private List<String> broken(String rules) throws IOException {
        if (!Boolean.TRUE.equals(driver.executeScript("return 'axe' in window"))) {
            driver.executeScript(axe());
        }
        Object found = driver.executeAsyncScript("const done = arguments[0];"
                + "axe.run({runOnly: " + rules + ", resultTypes: ['violations'], preload: false})"
                + ".then(r => done(r.violations"
                + ".filter(v => v.impact === 'serious' || v.impact === 'critical')"
                + ".map(v => v.id + ': ' + v.nodes.map(n => n.html.slice(0, 200)).join(' | '))));");
        return ((List<?>) found).stream().map(Object::toString).toList();
    }

    private static String axe() throws IOException {
        try (InputStream in =
                Screen.class.getResourceAsStream("/META-INF/resources/webjars/axe-core/4.6.3/axe.min.js")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** Shows the page as it would be on paper, or in a dark room. */
    void emulate(String media, String scheme) {
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of("media", media, "features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
    }

    /** Presses keys where the focus is. */
    void press(CharSequence... keys) {
        driver.switchTo().activeElement().sendKeys(keys);
    }

    /** An attribute of what has the focus. */
    @Nullable
    String focused(String attribute) {
        return driver.switchTo().activeElement().getDomAttribute(attribute);
    }

    /** Goes on by the tab key until what has the focus has an attribute of that value; by it alone, as without a mouse. */
    void tabTo(String attribute, String value) {
        for (int tabs = 0; tabs < 300; tabs++) {
            press(Keys.TAB);
            if (value.equals(focused(attribute))) {
                return;
            }
        }
        throw new AssertionError("no way by the tab key to " + attribute + " " + value + " on " + text());
    }

    /** Pictures of the page in the light, in a dark room and on paper. */
    void looks(String name) throws IOException {
        picture(name + "-light");
        emulate("screen", "dark");
        picture(name + "-dark");
        emulate("print", "light");
        picture(name + "-print");
        emulate("screen", "light");
    }

    /** A picture of the page, for a person to look at. */
    void picture(String name) throws IOException {
        Path folder = Files.createDirectories(Path.of("target", "screens"));
        Files.write(folder.resolve(name + ".png"), driver.getScreenshotAs(OutputType.BYTES));
    }

    @Override
    public void close() {
        driver.quit();
    }
}

package org.sunder.page;

/** Finds what a finger would press by the words beside it. */
final class Labels {

    private Labels() {}

    /** Types into the last visible field with that label. */
    static void field(Browser phone, String label, String text) {
        phone.type("#" + id(phone, label), text);
    }

    static void pick(Browser phone, String label, String value) {
        phone.script(
                "const s = document.getElementById(arguments[0]); s.value = arguments[1];"
                        + " s.dispatchEvent(new Event('change', {bubbles: true}))",
                id(phone, label),
                value);
    }

    /** Presses the button with those words, as soon as it can be pressed. */
    static void press(Browser phone, String words) {
        phone.until(
                "a button " + words,
                d -> phone.script(
                        "const b = [...document.querySelectorAll('button')].find(b => b.textContent === arguments[0] && b.offsetParent && !b.disabled);"
                                + " if (b) b.click(); return b ? true : null",
                        words));
    }

    /** Id of the last visible field with that label. */
    static String id(Browser phone, String label) {
        return phone.until("a field " + label, d -> (String) phone.script(
                "const l = [...document.querySelectorAll('label')].filter(l => l.textContent === arguments[0] && l.offsetParent).pop();"
                        + " return l ? l.htmlFor : null",
                label));
    }
}

package org.tidegate.console;

import java.time.Duration;
import java.util.Locale;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.web.servlet.LocaleResolver;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;
import org.springframework.web.servlet.i18n.CookieLocaleResolver;
import org.springframework.web.servlet.i18n.LocaleChangeInterceptor;

/** The languages of the pages: the one chosen, else the browser's, else English. */
@Configuration
class Languages implements WebMvcConfigurer {

    /** British English for dates: the day comes before the month. */
    private static final Locale ENGLISH = Locale.UK;

    private static final Locale SPANISH = Locale.forLanguageTag("es");

    /** Whatever a cookie or an address asks for, only a language that there are words in. */
    private static final class Chosen extends CookieLocaleResolver {
        Chosen() {
            super("tidegate-language");
            setCookieMaxAge(Duration.ofDays(365));
            setCookieHttpOnly(true);
            setCookieSameSite("Strict");
            setRejectInvalidCookies(false);
            setDefaultLocaleFunction(request -> known(request.getLocale()));
        }

        @Override
        protected Locale parseLocaleValue(String value) {
            return known(Locale.forLanguageTag(value));
        }
    }

    @Bean
    LocaleResolver localeResolver() {
        return new Chosen();
    }

    static Locale known(Locale asked) {
        return asked.getLanguage().equals(SPANISH.getLanguage()) ? SPANISH : ENGLISH;
    }

    @Override
    public void addInterceptors(InterceptorRegistry registry) {
        LocaleChangeInterceptor change = new LocaleChangeInterceptor();
        change.setParamName("lang");
        change.setIgnoreInvalidLocale(true);
        registry.addInterceptor(change);
    }
}

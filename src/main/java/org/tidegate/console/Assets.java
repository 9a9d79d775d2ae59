package org.tidegate.console;

import java.io.IOException;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.web.servlet.config.annotation.ResourceHandlerRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/** Serves htmx out of its own jar, whatever version of it was built in. */
@Configuration
class Assets implements WebMvcConfigurer {

    private static final String HTMX = "classpath*:/META-INF/resources/webjars/htmx.org/*/dist/htmx.min.js";

    @Override
    public void addResourceHandlers(ResourceHandlerRegistry registry) {
        try {
            for (Resource script : new PathMatchingResourcePatternResolver().getResources(HTMX)) {
                String file = script.getURL().toString();
                registry.addResourceHandler("/static/htmx/**")
                        .addResourceLocations(file.substring(0, file.lastIndexOf('/') + 1));
            }
        } catch (IOException e) {
            throw new IllegalStateException("the program was built without htmx", e);
        }
    }
}

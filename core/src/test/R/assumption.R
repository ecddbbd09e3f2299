# Oracle values for org.twinbar.statistics.assumption: prints the rows of checks.csv whose source is R.
# Run: Rscript core/src/test/R/assumption.R
# Made with R 4.2.2 and nortest 1.0-4.
suppressMessages(library(nortest))
row <- function(id, quantity, inputs, expected, tolerance, source)
  cat(sprintf('%s,%s,%s,%.12g,%s,%s\n', id, quantity, inputs, expected, tolerance, source))
sets <- list(three = c(1.2, 3.4, 3.9), five = c(31.2, 35.6, 38.9, 40.1, 52.3), twelve = c(49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1, 48.8, 58.0),
             precip = as.numeric(precip))
for (n in names(sets)) { s <- shapiro.test(sets[[n]])
  row(paste0("R-shapiro-w-", n), "W", n, s$statistic, "1e-8", "R 4.2.2 shapiro.test"); row(paste0("R-shapiro-p-", n), "p", n, s$p.value, "1e-7", "R 4.2.2 shapiro.test") }
for (n in c("twelve", "precip")) { s <- ad.test(sets[[n]])
  row(paste0("R-anderson-a-", n), "A squared", n, s$statistic, "1e-9", "R 4.2.2 nortest 1.0-4 ad.test"); row(paste0("R-anderson-p-", n), "p", n, s$p.value, "1e-9", "R 4.2.2 nortest 1.0-4 ad.test") }
k <- cor.test(1:12, sets$twelve, method = "kendall", exact = TRUE)
row("R-kendall-tau", "tau", "twelve", k$estimate, "1e-12", "R 4.2.2 cor.test"); row("R-kendall-p", "exact two-sided p", "twelve", k$p.value, "1e-10", "R 4.2.2 cor.test")
tied <- c(3, 3, 4, 2, 5, 5, 5, 6, 7, 6, 8, 8)
k <- suppressWarnings(cor.test(1:12, tied, method = "kendall", exact = FALSE, continuity = TRUE))
row("R-kendall-tied-tau", "tau b", "tied", k$estimate, "1e-12", "R 4.2.2 cor.test"); row("R-kendall-tied-p", "two-sided p", "tied", k$p.value, "1e-9", "R 4.2.2 cor.test")
x <- sets$twelve; side <- x > median(x); runs <- function(s) 1 + sum(s[-1] != s[-length(s)])

# Oracle values for org.twinbar.statistics.panel: prints the rows of checks.csv whose source is R.
# Run: Rscript core/src/test/R/panel.R
# Made with R 4.2.2 and exactRankTests 0.8-35.
suppressMessages(library(exactRankTests))
row <- function(id, quantity, inputs, expected, tolerance, source)
  cat(sprintf('%s,%s,%s,%.12g,%s,%s\n', id, quantity, inputs, expected, tolerance, source))
d <- c(1.83, 0.50, 1.62, 2.48, 1.68, 1.88, 1.55, 3.06, 1.30) - c(0.878, 0.647, 0.598, 2.05, 1.06, 1.29, 1.06, 3.14, 1.29)
w <- wilcox.test(d, conf.int = TRUE)
row("R-signed-two", "two-sided p", "depression", w$p.value, "1e-12", "R 4.2.2 wilcox.test")
row("R-shift", "Hodges-Lehmann shift", "depression", w$estimate, "1e-10", "R 4.2.2 wilcox.test")
row("R-shift-low", "its low end", "depression", w$conf.int[1], "1e-10", "R 4.2.2 wilcox.test")
row("R-shift-high", "its high end", "depression", w$conf.int[2], "1e-10", "R 4.2.2 wilcox.test")
tied <- c(1, 1, -1, 2, 2, 3, -2, 4, 0, 4, 5)
row("R-signed-tied", "two-sided p with ties and a zero", "1 1 -1 2 2 3 -2 4 0 4 5", suppressWarnings(wilcox.exact(tied)$p.value), "1e-12", "R 4.2.2 exactRankTests 0.8-35")
# The standard error of weighted kappa by the delta method, derivatives taken numerically over the nine cells.
t3 <- matrix(c(10, 2, 0, 3, 8, 2, 1, 4, 10), 3); n <- sum(t3)
rowi <- base::row
kap <- function(p, pow) { p <- matrix(p, 3); w <- 1 - (abs(rowi(p) - col(p)) / 2)^pow; s <- sum(p); p <- p / s; po <- sum(w * p); pe <- sum(w * outer(rowSums(p), colSums(p))); (po - pe) / (1 - pe) }
for (pow in 1:2) {
  p <- as.vector(t3) / n; g <- sapply(1:9, function(i) { h <- 1e-6; a <- p; b <- p; a[i] <- a[i] + h; b[i] <- b[i] - h; (kap(a, pow) - kap(b, pow)) / (2 * h) })
  se <- sqrt((sum(p * g^2) - sum(p * g)^2) / n)
  row(paste0("R-kappa-low-", pow), "low end of weighted kappa", "3 by 3 table", kap(p, pow) - qnorm(.975) * se, "1e-7", "R 4.2.2 delta method with numerical derivatives")
}

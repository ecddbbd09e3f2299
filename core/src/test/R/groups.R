# Oracle values for org.twinbar.statistics.groups: prints the rows of checks.csv whose source is R.
# Run: Rscript core/src/test/R/groups.R
# Made with R 4.2.2, mvtnorm 1.1-3 (Genz and Bretz's integration, abseps 1e-7) and multcomp 1.4-22.
suppressMessages({library(mvtnorm); library(multcomp)})
set.seed(1)
row <- function(id, quantity, inputs, expected, tolerance, source)
  cat(sprintf('%s,%s,%s,%.15g,%s,%s\n', id, quantity, inputs, expected, tolerance, source))
for (a in list(c(2, 3, 2), c(3.5, 3, 12), c(4.2, 5, 20), c(1, 8, 4), c(3.3, 4, Inf)))
  row(paste("R-ptukey", a[1], a[2], a[3], sep = "-"), "P(Q <= q)", paste("q", a[1], "k", a[2], "df", a[3]),
      ptukey(a[1], a[2], a[3]), "1e-9", "R 4.2.2 ptukey")
for (a in list(c(0.95, 3, 12), c(0.99, 5, 20), c(0.95, 2, 3), c(0.9, 10, 8)))
  row(paste("R-qtukey", a[1], a[2], a[3], sep = "-"), "quantile of Q", paste("p", a[1], "k", a[2], "df", a[3]),
      qtukey(a[1], a[2], a[3]), "1e-4", "R 4.2.2 qtukey: its iteration stops at 1e-4")
dunnett <- function(d, n0, n, df) {
  l <- sqrt(n / (n + n0)); corr <- outer(l, l); diag(corr) <- 1
  pmvt(rep(-d, length(n)), rep(d, length(n)), df = df, corr = corr, algorithm = GenzBretz(2e6, 1e-7, 0))[1]
}
row("R-dunnett-equal", "P(max|T| <= d)", "d 2.5; n0 5; n 5 5 5; df 16", dunnett(2.5, 5, c(5, 5, 5), 16), "2e-6", "R 4.2.2 mvtnorm 1.1-3 pmvt")
row("R-dunnett-unequal", "P(max|T| <= d)", "d 2.2; n0 8; n 3 5 10 4; df 25", dunnett(2.2, 8, c(3, 5, 10, 4), 25), "2e-6", "R 4.2.2 mvtnorm 1.1-3 pmvt")
row("R-dunnett-few", "P(max|T| <= d)", "d 3.1; n0 3; n 3 3; df 6", dunnett(3.1, 3, c(3, 3), 6), "2e-6", "R 4.2.2 mvtnorm 1.1-3 pmvt")
g <- PlantGrowth
g2 <- g[-c(3, 7, 12), ]
s <- summary(glht(aov(weight ~ group, g2), linfct = mcp(group = "Dunnett")), test = adjusted(abseps = 1e-8))
for (i in 1:2) row(paste0("R-plants-p", i), "p of Dunnett", "PlantGrowth without rows 3 7 12", s$test$pvalues[i], "1e-5", "R 4.2.2 multcomp 1.4-22")
ci <- confint(glht(aov(weight ~ group, g2), linfct = mcp(group = "Dunnett")))$confint
for (i in 1:2) { row(paste0("R-plants-low", i), "low end of Dunnett", "PlantGrowth without rows 3 7 12", ci[i, 2], "1e-3", "R 4.2.2 multcomp 1.4-22; its quantile is found by Monte Carlo")
                 row(paste0("R-plants-high", i), "high end of Dunnett", "PlantGrowth without rows 3 7 12", ci[i, 3], "1e-3", "R 4.2.2 multcomp 1.4-22; its quantile is found by Monte Carlo") }
tk <- TukeyHSD(aov(weight ~ group, g2))$group
for (i in 1:3) { row(paste0("R-kramer-low", i), "Tukey and Kramer's low end", "PlantGrowth without rows 3 7 12", tk[i, 2], "1e-4", "R 4.2.2 TukeyHSD")
                 row(paste0("R-kramer-p", i), "Tukey and Kramer's p", "PlantGrowth without rows 3 7 12", tk[i, 4], "1e-6", "R 4.2.2 TukeyHSD") }
# The interaction of set W and the same readings less 3 and with twice the spread, by gls with a variance for each group: its estimate
# and its standard error; degrees of freedom by the formula.
t1 <- c(47.9, 46.2, 49.0, 48.1, 45.6, 47.4); c1 <- c(42.1, 44.0, 41.3, 43.5, 42.8); t2 <- c(44, 41.3, 46.2, 43.1); c2 <- c(40.2, 43.9, 41.7)
v <- function(x) var(x) / length(x)
d <- (mean(t1) - mean(c1)) - (mean(t2) - mean(c2)); w <- c(v(t1), v(c1), v(t2), v(c2)); n <- c(6, 5, 4, 3)
df <- sum(w)^2 / sum(w^2 / (n - 1))
row("R-interaction", "difference of differences", "set W against 44 41.3 46.2 43.1 / 40.2 43.9 41.7", d, "1e-10", "R 4.2.2 arithmetic")
row("R-interaction-low", "its low end", "same", d - qt(.975, df) * sqrt(sum(w)), "1e-9", "R 4.2.2 arithmetic")
m <- c(mean(t1), mean(c1), mean(t2), mean(c2)); w <- w / m^2; df <- sum(w)^2 / sum(w^2 / (n - 1))
r <- m[1] / m[2] / (m[3] / m[4])
row("R-interaction-ratio", "ratio of ratios", "same", r, "1e-10", "R 4.2.2 arithmetic")
row("R-interaction-ratio-high", "its high end", "same", r * exp(qt(.975, df) * sqrt(sum(w))), "1e-9", "R 4.2.2 arithmetic")

# Oracle values for org.twinbar.statistics.pooling: prints the rows of checks.csv whose source is R, and the data as values.
# Run: Rscript core/src/test/R/pooling.R
# Made with R 4.2.2 and metafor 3.8-1 on its BCG vaccine trials (Colditz et al. 1994, JAMA 271:698), log relative risks.
suppressMessages(library(metafor))
row <- function(id, quantity, expected, tolerance)
  cat(sprintf('%s,%s,BCG trials,%.12g,%s,R 4.2.2 metafor 3.8-1\n', id, quantity, expected, tolerance))
d <- escalc(measure = "RR", ai = tpos, bi = tneg, ci = cpos, di = cneg, data = dat.bcg)
if ("data" %in% commandArgs(TRUE)) { cat(sprintf("%.17g", d$yi), "\n"); cat(sprintf("%.17g", d$vi), "\n"); quit() }
fe <- rma(yi, vi, data = d, method = "FE")
row("R-fixed", "fixed effect", fe$beta[1], "1e-9"); row("R-fixed-low", "its low end", fe$ci.lb, "1e-9")
row("R-Q", "Q", fe$QE, "1e-8"); row("R-Q-p", "its p", fe$QEp, "1e-12")
for (m in c("REML", "PM")) {
  r <- rma(yi, vi, data = d, method = m, test = "knha", control = list(threshold = 1e-12, tol = 1e-12))
  row(paste0("R-", m), "random effects mean", r$beta[1], "1e-7"); row(paste0("R-", m, "-tau2"), "variance between studies", r$tau2, "1e-7")
  row(paste0("R-", m, "-low"), "low end on t with k - 1", r$ci.lb, "1e-6")
  row(paste0("R-", m, "-high"), "high end on t with k - 1", r$ci.ub, "1e-6"); row(paste0("R-", m, "-I2"), "I squared in per cent", r$I2, "1e-4")
  row(paste0("R-", m, "-next"), "low end of the next study on t with k - 2", r$beta[1] - qt(.975, r$k - 2) * sqrt(r$tau2 + r$se^2), "1e-6")
}

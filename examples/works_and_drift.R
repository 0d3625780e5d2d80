# Reads an export of Stonetone: Rscript examples/works_and_drift.R FOLDER
# Prints how many works there are of each stage, and how the darks of each edition drifted.
# Columns and units: docs/export.md. An empty cell is unknown: it is read as NA, never as 0.

folder <- commandArgs(trailingOnly = TRUE)[1]
records <- function(kind) {
  read.csv(file.path(folder, paste0(kind, ".csv")), na.strings = "", encoding = "UTF-8", check.names = FALSE)
}

stages <- table(records("works")$stage)
cat("works:", paste(stages, names(stages), collapse = ", "), "\n")

readings <- subset(records("ledger_entries"), kind == "reading" & !is.na(darks))
for (edition in unique(readings$editionId)) {
  darks <- readings$darks[readings$editionId == edition]
  cat(sprintf("edition %s: darks %.3f to %.3f over %d readings\n", edition, darks[1], tail(darks, 1), length(darks)))
}
